import { describe, expect, test } from 'vitest';
import {
  idealiseCarried,
  leftBehind,
} from '../../../src/project/idealise/idealise-carried.ts';
import type { CarriedReaction } from '../../../src/project/index.ts';

const reaction: CarriedReaction = {
  id: 'load-0003',
  member: 'B2',
  point: 'C',
  at: { x: 4 },
  times: 2,
  carry: 'vertical',
  uses: [],
  span: { file: 'members/b1.yaml', start: 0, end: 1 },
};
const given = {
  id: 'load-0003',
  case: 'L',
  reaction: { x: 300, y: 5000, moment: -700 },
};

describe('a carried reaction', () => {
  test('acts turned round, as often as it comes', () => {
    expect(idealiseCarried(reaction, given)).toEqual([
      { id: 'load-0003:L:force', case: 'L', kind: 'point', x: 4, fx: 0, fy: -10000 },
    ]);
  });

  test('brings the x component and the moment along where that is asked for', () => {
    expect(idealiseCarried({ ...reaction, carry: 'all', side: 'left' }, given)).toEqual(
      [
        {
          id: 'load-0003:L:force',
          case: 'L',
          kind: 'point',
          x: 4,
          fx: -600,
          fy: -10000,
        },
        {
          id: 'load-0003:L:couple',
          case: 'L',
          kind: 'couple',
          x: 4,
          m: 1400,
          side: 'left',
        },
      ],
    );
  });

  test('leaves out what is 0 or not given', () => {
    const nothing = { ...given, reaction: { x: null, y: 0, moment: null } };
    expect(idealiseCarried({ ...reaction, carry: 'all' }, nothing)).toEqual([]);
    expect(leftBehind(reaction, nothing)).toBeUndefined();
  });

  test('tells what stays behind', () => {
    expect(leftBehind(reaction, given)).toEqual({
      id: 'load-0003',
      case: 'L',
      x: 300,
      moment: -700,
    });
    expect(leftBehind({ ...reaction, carry: 'all' }, given)).toBeUndefined();
  });
});
