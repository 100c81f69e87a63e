import { describe, expect, test } from 'vitest';
import type { CarriedReaction } from '../../../src/project/definitions.ts';
import {
  greatestComponents,
  idealiseCarriedRange,
} from '../../../src/project/idealise/idealise-carried-range.ts';
import type { CarriedComponents } from '../../../src/project/idealise/idealise-carried.ts';
import { leftBehind } from '../../../src/project/idealise/idealise-carried.ts';
import type { Range } from '../../../src/statics/index.ts';
import { soundFolder } from '../../support/folder.ts';

const between = (min: number, max: number): Range => {
  const arrangement = { choices: [], trains: [] };
  return { max: { value: max, arrangement }, min: { value: min, arrangement } };
};

function carried(more: string): CarriedReaction {
  const { members } = soundFolder({
    'loads.yaml': 'cases: { L: { kind: live } }\n',
    'members/b1.yaml':
      'mark: B1\nkind: beam\npoints: { A: 0 ft, B: 20 ft }\nsupports: { A: fixed }\n',
    'members/g1.yaml': `mark: G1\nkind: beam\npoints: { A: 0 ft, M: 5 ft, B: 20 ft }\nsupports: { A: fixed }\nloads: [ { reaction: B1.A, at: M${more} } ]\n`,
  });
  return members.find(({ mark }) => mark === 'G1')!.carried[0]!;
}

function components(
  of: CarriedReaction,
  range: NonNullable<CarriedComponents['range']>,
): CarriedComponents {
  return { id: of.id, case: 'L', reaction: greatestComponents(range), range };
}

describe('a carried reaction between two ends', () => {
  test('is a choice between its greatest and its least, turned round and as often as it is carried', () => {
    const of = carried(', times: 2');
    const { loads, choices } = idealiseCarriedRange(
      of,
      components(of, { x: null, y: between(-3, 10), moment: null }),
    );
    expect(loads).toEqual([]);
    expect(choices).toHaveLength(1);
    expect(choices[0]).toMatchObject({
      id: `${of.id}:L:y`,
      case: 'L',
      options: [
        { name: 'greatest', loads: [{ kind: 'point', fx: 0, fy: -20 }] },
        { name: 'least', loads: [{ kind: 'point', fx: 0, fy: 6 }] },
      ],
    });
  });

  test('is a plain load where it does not vary', () => {
    const of = carried('');
    const { loads, choices } = idealiseCarriedRange(
      of,
      components(of, { x: null, y: between(10, 10), moment: null }),
    );
    expect(choices).toEqual([]);
    expect(loads).toMatchObject([{ fy: -10 }]);
  });

  test('takes each component along as a choice of its own only where all are carried', () => {
    const range = { x: between(0, 4), y: between(0, 10), moment: between(-7, 2) };
    const [all, vertical] = [carried(', carry: all'), carried('')];
    const parts = idealiseCarriedRange(all, components(all, range)).choices;
    expect(parts.map(({ id }) => id.split(':').at(-1))).toEqual(['x', 'y', 'moment']);
    expect(parts[2]!.options[1]!.loads).toMatchObject([{ kind: 'couple', m: 7 }]);
    const one = idealiseCarriedRange(vertical, components(vertical, range));
    expect(one.choices.map(({ id }) => id.split(':').at(-1))).toEqual(['y']);
    expect(leftBehind(vertical, components(vertical, range))).toMatchObject({
      x: 4,
      moment: -7,
    });
  });

  test('has ids of its own for every load', () => {
    const of = carried(', carry: all');
    const { choices } = idealiseCarriedRange(
      of,
      components(of, { x: between(1, 4), y: between(1, 10), moment: between(-7, 2) }),
    );
    const ids = choices.flatMap(({ options }) =>
      options.flatMap(({ loads }) => loads.map(({ id }) => id)),
    );
    expect(new Set(ids).size).toBe(6);
  });
});
