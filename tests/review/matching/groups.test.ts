import { describe, expect, test } from 'vitest';
import { worthOf } from '../../../src/review/matching/atoms.ts';
import { groupsOf } from '../../../src/review/matching/groups.ts';
import { settlePairs } from '../../../src/review/matching/settle-pairs.ts';
import { forceAtom, leverTerm, reactionAtom } from './terms.ts';

const atoms = [reactionAtom('R', 5, 20), forceAtom('P', -8, 6), forceAtom('Q', -5, 11)];

describe('groupsOf', () => {
  test('any two and any three may stand in one number, each once', () => {
    const groups = groupsOf(atoms, atoms.map(worthOf));
    expect(groups.map(({ mask }) => mask).sort((a, b) => a - b)).toEqual([
      1, 2, 3, 4, 5, 6, 7,
    ]);
    expect(groups.find(({ mask }) => mask === 0b110)?.worth).toBe(-103);
  });

  test('all loads, all reactions and everything are wholes', () => {
    const groups = groupsOf(atoms, atoms.map(worthOf));
    const wholes = groups.filter(({ isWhole }) => isWhole).map(({ mask }) => mask);
    expect(wholes.sort((a, b) => a - b)).toEqual([1, 2, 4, 0b110, 0b111]);
  });

  test('what adds nothing stands in none', () => {
    const groups = groupsOf([...atoms, forceAtom('Z', -8, 0)], [100, -48, -55, 0]);
    expect(groups.every(({ mask }) => (mask & 8) === 0)).toBe(true);
  });

  test('of many things only the plain lumps are tried', () => {
    const many = Array.from({ length: 20 }, (_, at) => forceAtom(`P${at}`, -at - 1, 3));
    expect(groupsOf(many, many.map(worthOf)).length).toBeLessThan(100);
  });
});

describe('settlePairs', () => {
  const number = (force: number, arm: number) => {
    const term = leverTerm(force, arm);
    return { term, value: term.constant };
  };

  test('takes out what nobody can doubt', () => {
    const left = settlePairs([number(-8, 6), number(-5, 9)], atoms);
    expect(left.numbers.map(({ value }) => value)).toEqual([-45]);
    expect(left.atoms.map(({ id }) => id)).toEqual(['reaction R', 'load Q']);
  });

  test('of equal things as many as stand there, but one where one is left out', () => {
    const equal = [1, 2, 3].map((at) => forceAtom(`P${at}`, -8, 6));
    const twice = [number(-8, 6), number(-8, 6)];
    expect(settlePairs([...twice, number(-8, 6)], equal)).toEqual({
      numbers: [],
      atoms: [],
    });
    const left = settlePairs(twice, equal);
    expect([left.numbers.length, left.atoms.length]).toEqual([1, 2]);
  });
});
