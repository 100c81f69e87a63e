import { describe, expect, test } from 'vitest';
import { freshEffort, lineEffort } from '../../../src/review/matching/effort.ts';
import { atomsOf } from '../../../src/review/matching/atoms.ts';
import { matchTerms, prepareLine } from '../../../src/review/matching/match-terms.ts';
import { takingsOf } from '../../../src/review/matching/takings.ts';
import { markingContext } from '../../../src/review/marking-context.ts';
import { explainLine } from '../../../src/review/marking/explain-line.ts';
import { meaningsFor } from '../../../src/review/marking/meanings.ts';
import { openWorker } from '../../../src/review/marking/worker.ts';
import { readLine } from '../../../src/review/reading/read-line.ts';
import { workMembers } from '../../../src/derivation/index.ts';
import { soundFolder } from '../../support/folder.ts';
import { leverTerm } from '../matching/terms.ts';

const loads = Array.from(
  { length: 14 },
  (_, at) => `{ case: L, point: ${(at + 1) * 1.37} kip, at: ${at + 2} ft }`,
);
const spread = Array.from(
  { length: 6 },
  (_, at) =>
    `{ case: L, varying: [ ${at + 0.3} kip/ft, ${at / 2 + 0.7} kip/ft ], from: ${at} ft, to: ${at + 9} ft }`,
);
const project = soundFolder({
  'members/s9.yaml': `mark: S9\nkind: beam\npoints: { A: 0 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ ${[...loads, ...spread].join(', ')} ]\n`,
});
const [worked] = workMembers(project, []);
const context =
  worked?.kind === 'worked' ? markingContext(project, worked.work, 'L')! : undefined!;

const hostile: Readonly<Record<string, string>> = {
  'terms that fit nothing': Array.from(
    { length: 28 },
    (_, at) => `${at + 3.3} kip * ${at / 7 + 1} ft`,
  ).join(' - '),
  'equal terms': Array.from({ length: 60 }, () => '1.37 kip * 2.01 ft').join(' - '),
  'terms over many lengths': Array.from(
    { length: 40 },
    (_, at) => `${at + 1.1} kip * 3 ft * 7 ft / ${at + 2.3} ft`,
  ).join(' - '),
  'the loads of the member, each out by a little': Array.from(
    { length: 14 },
    (_, at) => `${((at + 1) * 1.44).toFixed(3)} kip * ${at + 2.2} ft`,
  ).join(' - '),
};

function effortOf(line: string): {
  readonly spent: number;
  readonly isComplete: boolean | undefined;
} {
  const worker = openWorker(
    context,
    project.worked[0] ?? ({ signs: {}, names: [], steps: [] } as never),
  );
  const effort = freshEffort();
  const { explained } = explainLine({
    context,
    claim: { sum: { kind: 'moments', about: 0 }, about: 'A' },
    parts: [{}],
    readings: readLine(line, []).readings ?? [],
    meanings: meaningsFor(context, worker),
    concluded: new Map(),
    truths: context.truths,
    sense: 1,
    effort,
  });
  return { spent: effort.spent, isComplete: explained?.isComplete };
}

// One look at what a number may stand for is the most that is done between two looks at the bound.
const room = 40_000;

describe('the search is bounded, counted in comparisons', () => {
  for (const [title, terms] of Object.entries(hostile))
    test(`${title}: no more than a line is worth`, () => {
      const { spent } = effortOf(`RC * 21 ft - ${terms} = 0`);
      expect(spent).toBeGreaterThan(0);
      expect(spent).toBeLessThanOrEqual(lineEffort + room);
    });

  test('a line of twenty loads with one slip is explained with a quarter of that', () => {
    const own = loads.map((_, at) => `${(at + 1) * 1.37} kip * ${at + 2} ft`);
    const taken = { kind: 'whole' } as const;
    const sum = { kind: 'moments', about: 0 } as const;
    const atoms = atomsOf(context, { sum, part: {} }, taken);
    const resultants = atoms.flatMap(({ what, size, x }) =>
      what.kind === 'load' && what.resultant !== undefined
        ? [`${size / 4448.2216152605} kip * ${x / 0.3048} ft`]
        : [],
    );
    const line = `RC * 21 ft - ${[...own, ...resultants].join(' - ')} = 0`;
    expect(effortOf(line)).toEqual({ spent: 0, isComplete: true });
    const turned = effortOf(line.replace(' - 4.11 ', ' + 4.11 '));
    expect(turned.isComplete).toBe(true);
    expect(turned.spent).toBeLessThan(lineEffort / 4);
  });

  test('however loads are taken, preparing a line is counted too', () => {
    const sum = { kind: 'moments', about: 0 } as const;
    for (const taking of takingsOf(context, sum)) {
      const effort = freshEffort(1000);
      const atoms = atomsOf(context, { sum, part: {} }, taking);
      const terms = Array.from({ length: 12 }, (_, at) =>
        leverTerm(-at - 0.3, at + 0.7),
      );
      const line = prepareLine(
        { terms, atoms, sum, scale: 1, concluded: new Map() },
        effort,
      );
      if (line !== undefined) matchTerms(line, effort);
      expect(effort.spent).toBeGreaterThan(terms.length);
      expect(effort.spent).toBeLessThan(1000 + room);
    }
  });
});
