import { describe, expect, test } from 'vitest';
import { ratesOf } from '../sheets/rates.ts';
import { markSheets } from '../sheets/mark-sheets.ts';
import { sheet } from '../sheets/sheet.ts';

const members = {
  V1: `mark: V1
kind: beam
points: { A: 0 m, B: 2 m, C: 8 m }
supports: { A: pin, C: roller }
loads: [ { case: L, point: 12 kN, at: B } ]
`,
};
// RA = 9 kN, RC = 3 kN, M at B = 18 kN m.
const names = '{ RA: reaction A up, RC: reaction C up, W: load L at B }';

function told(lines: string): readonly string[] {
  const { told: text } = ratesOf(
    markSheets(members, [sheet('V1', 'V1', { names }, lines)]),
  );
  return text.split('\n').slice(1);
}

describe('values and what is carried on from them', () => {
  test('either side of a jump is right, a value between the two is not', () => {
    expect(
      told(`shear at B: RA ; V = 9 kN
        shear at B: -RC ; V = -3 kN
        shear at B: 3 kN ; V = 3 kN
        shear at B: 6 kN ; V = 6 kN => wrong
        shear left of B: -RC ; V = -3 kN => wrong`),
    ).toEqual([]);
  });

  test('a value may be worked from the square of an unknown', () => {
    expect(told('moment at B: RA * RA / 9 kN * 2 m ; M = 18 kN m')).toEqual([]);
  });

  test('a symbol that a conclusion names is declared by it', () => {
    expect(
      told(`moment at B: RA * 2 m ; MB = 18 kN m
        moment at B: MB ; M = 18 kN m
        def: S = MB / 2 = 9 kN m`),
    ).toEqual([]);
  });

  test('a declared load wrongly worked is wrong once, and then carried', () => {
    expect(
      told(`def: W = 10 kN + 4 kN = 14 kN => wrong magnitude
        moments about A: RC * 8 m - W * 2 m = 0 ; RC = 3.5 kN => follows
        forces up: RA + RC - W = 0 ; RA = 10.5 kN => follows`),
    ).toEqual([]);
  });

  test('every link of a conclusion is checked', () => {
    expect(
      told(`moments about A: RC * 8 m = 24 kN m ; RC = 24 kN m / 8 m = 3 kN
        forces up: RA + RC = 12 kN ; RA = 12 kN - 4 kN = 9 kN => wrong arithmetic`),
    ).toEqual([]);
  });
});
