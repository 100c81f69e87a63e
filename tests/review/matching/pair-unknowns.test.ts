import { expect, test } from 'vitest';
import { pairUnknowns } from '../../../src/review/matching/pair-unknowns.ts';
import { reactionAtom, unknownTerm } from './terms.ts';

const atoms = [reactionAtom('A', 6000, 0), reactionAtom('C', 2400, 21)];
const of = { scale: 1, sum: { kind: 'moments', about: 0 } } as const;

test.each([
  ['with its arm it stands as it belongs', 'C', 21, []],
  ['with its sign turned', 'C', -21, ['sign']],
  ['with another arm', 'C', 15, ['lever-arm']],
  ['with an arm in inches', 'C', 252, ['unit']],
  ['through the point it has no term', 'A', 6, ['extra-term']],
  ['one that does not act is extra', 'B', 6, ['extra-term']],
])('an unknown %s', (_, key, share, kinds) => {
  const { slips } = pairUnknowns([unknownTerm(key, share)], atoms, of);
  expect(slips.map(({ kind }) => kind)).toEqual(kinds);
});

test('the shares of one unknown are added up, and only what stands is used', () => {
  const terms = [unknownTerm('C', 15), unknownTerm('C', 6)];
  const { slips, used } = pairUnknowns(terms, atoms, of);
  expect(slips).toEqual([]);
  expect([...used]).toEqual(['reaction C']);
});
