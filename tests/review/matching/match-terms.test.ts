import { describe, expect, test } from 'vitest';
import type { Atom } from '../../../src/review/matching/atoms.ts';
import { freshEffort } from '../../../src/review/matching/effort.ts';
import { matchTerms, prepareLine } from '../../../src/review/matching/match-terms.ts';
import type { WorkerTerm } from '../../../src/review/matching/worker-terms.ts';
import {
  forceAtom,
  leverTerm,
  numberTerm,
  reactionAtom,
  unknownTerm,
} from './terms.ts';

const sum = { kind: 'moments', about: 0 } as const;
// Moments about A of a beam of 20 m with 8 N at 6 m, 5 N at 11 m and its right reaction.
const atoms: readonly Atom[] = [
  reactionAtom('R', 5.15, 20),
  forceAtom('P', -8, 6),
  forceAtom('Q', -5, 11),
];
const [R, P, Q] = [unknownTerm('R', 20), leverTerm(-8, 6), leverTerm(-5, 11)];

function explain(
  terms: readonly WorkerTerm[],
  of: readonly Atom[] = atoms,
  concluded: ReadonlyMap<string, number> = new Map(),
): readonly string[] {
  const effort = freshEffort();
  const line = prepareLine({ terms, atoms: of, sum, scale: 1, concluded }, effort);
  return matchTerms(line!, effort).map(({ slips }) =>
    slips
      .map(({ kind, atoms: own }) => [kind, ...own.map(({ id }) => id)].join(' '))
      .join(', '),
  );
}

describe('right lines', () => {
  test.each<[string, readonly WorkerTerm[]]>([
    ['term by term', [R, P, Q]],
    ['lumped', [R, numberTerm(-103)]],
    ['one force as two', [R, P, leverTerm(-2, 11), leverTerm(-3, 11)]],
    ['the reaction as a number', [leverTerm(5.15, 20), P, Q]],
    ['everything in one number that is nothing', [R, numberTerm(-100), numberTerm(-3)]],
  ])('%s: no slip', (_, terms) => {
    expect(explain(terms)).toEqual(['']);
  });

  test('a reaction as a number is what the worker found for it before', () => {
    expect(explain([leverTerm(6, 20), P, Q], atoms, new Map([['R', 6]]))).toEqual(['']);
    expect(explain([leverTerm(6, 20), P, Q])).toEqual(['magnitude reaction R']);
  });
});

describe('each kind of slip', () => {
  test.each<[string, readonly WorkerTerm[], string]>([
    ['a turned sign', [R, leverTerm(8, 6), Q], 'sign load P'],
    ['a turned unknown', [unknownTerm('R', -20), P, Q], 'sign reaction R'],
    ['another arm', [R, leverTerm(-8, 9), Q], 'lever-arm load P'],
    ['another arm of an unknown', [unknownTerm('R', 15), P, Q], 'lever-arm reaction R'],
    ['a force left out', [R, P], 'missing-term load Q'],
    ['an unknown left out', [P, Q], 'missing-term reaction R'],
    ['a term too many', [R, P, Q, leverTerm(-3.3, 7.7)], 'extra-term'],
    ['an unknown that does not act', [R, P, Q, unknownTerm('S', 3)], 'extra-term'],
    ['another force', [R, leverTerm(-9.5, 6), Q], 'magnitude load P'],
    ['inches taken for feet', [R, leverTerm(-8, 72), Q], 'unit load P'],
    ['a lump that is not the sum', [R, numberTerm(-113)], 'magnitude load P load Q'],
  ])('%s', (_, terms, expected) => {
    expect(explain(terms)).toEqual([expected]);
  });

  test('an arm of two figures is a rounding of its own', () => {
    const thirds = [atoms[0]!, forceAtom('P', -8, 19 / 3), atoms[2]!];
    expect(explain([R, leverTerm(-8, 6.33), Q], thirds)).toEqual(['']);
    expect(explain([R, leverTerm(-8, 6.3), Q], thirds)).toEqual(['rounding load P']);
    expect(explain([R, leverTerm(-8, 6.2), Q], thirds)).toEqual(['lever-arm load P']);
  });

  test('two slips in one line are both told', () => {
    expect(explain([R, leverTerm(8, 6), leverTerm(-5, 9)])).toEqual([
      'sign load P, lever-arm load Q',
    ]);
  });

  test('a turned term with another arm is told as both', () => {
    expect(explain([R, leverTerm(8, 9), Q])).toEqual(['sign load P, lever-arm load P']);
  });
});

describe('two readings that cost the same', () => {
  const twins = [
    reactionAtom('R', 6, 20),
    forceAtom('P', -8, 6),
    forceAtom('Q', -8, 9),
  ];

  test('are both named, where one of two equal forces is left out with an odd arm', () => {
    expect(explain([unknownTerm('R', 20), leverTerm(-8, 7.5)], twins)).toEqual([
      'lever-arm load P, missing-term load Q',
      'lever-arm load Q, missing-term load P',
    ]);
  });

  test('are one where the line says which', () => {
    expect(explain([unknownTerm('R', 20), leverTerm(-8, 6)], twins)).toEqual([
      'missing-term load Q',
    ]);
  });
});

describe('long lines', () => {
  const many = Array.from({ length: 34 }, (_, at) =>
    forceAtom(`P${at}`, -(at + 1), at + 2),
  );
  const terms = many.map(({ size, x }) => leverTerm(-size, x));

  test('more forces than have a bit each are settled by plain pairs first', () => {
    expect(explain(terms, many)).toEqual(['']);
    expect(explain(terms.slice(1), many)).toEqual(['missing-term load P0']);
    const turned = terms.map((term, at) => (at === 20 ? leverTerm(21, 22) : term));
    expect(explain(turned, many)).toEqual(['sign load P20']);
  });

  test('numbers that fit nothing are too many to be searched', () => {
    const odd = many.map((_, at) => leverTerm(-(at + 0.377), at / 7 + 0.913));
    const line = prepareLine(
      { terms: odd, atoms: many, sum, scale: 1, concluded: new Map() },
      freshEffort(),
    );
    expect(line?.puzzle).toBeUndefined();
  });

  test('unknowns that alone cost more than the bound are not searched', () => {
    const matching = {
      terms: [unknownTerm('R', -20)],
      atoms,
      sum,
      scale: 1,
      concluded: new Map(),
    };
    expect(prepareLine(matching, freshEffort(), 0.9)).toBeUndefined();
    expect(prepareLine(matching, freshEffort(), 1)?.named).toHaveLength(1);
  });
});
