import { sheet, type Head, type Sheet } from './sheet.ts';

/** A triangle, a trapezoid, a beam of two spans, a load at a slope. */
export const loadMembers: Readonly<Record<string, string>> = {
  H7: `mark: H7
kind: beam
points: { A: 0 ft, B: 18 ft }
supports: { A: pin, B: roller }
loads: [ { case: L, varying: [ 0 kip/ft, 1.2 kip/ft ], from: A, to: B } ]
`,
  H8: `mark: H8
kind: beam
points: { A: 0 m, B: 5 m }
supports: { A: pin, B: roller }
loads: [ { case: D, varying: [ 4 kN/m, 10 kN/m ], from: A, to: B } ]
`,
  H9: `mark: H9
kind: beam
points: { A: 0 ft, B: 20 ft, C: 40 ft }
supports: { A: pin, B: roller, C: roller }
section: { I: 800 in^4 }
material: { E: 29000 ksi }
loads: [ { case: D, uniform: 1.5 kip/ft, from: A, to: C } ]
`,
  H10: `mark: H10
kind: beam
points: { A: 0 m, B: 3 m, C: 6 m }
supports: { A: pin, C: roller }
loads: [ { case: L, point: 20 kN, at: B, direction: 300 deg } ]
`,
};

function on(member: string, names: string) {
  return (title: string, lines: string, head: Head = {}): Sheet =>
    sheet(`${member}: ${title}`, member, { names, ...head }, lines);
}

const [triangle, trapezoid, twoSpans, sloped] = [
  on(
    'H7',
    '{ RA: reaction A up, RB: reaction B up, W: resultant of L, w: intensity L at B }',
  ),
  on('H8', '{ RA: reaction A up, RB: reaction B up, W: resultant of D }'),
  on(
    'H9',
    '{ RA: reaction A up, RB: reaction B up, RC: reaction C up, MB: moment at B, w: intensity D at A, L: length A to B }',
  ),
  on(
    'H10',
    '{ RA: reaction A up, HA: reaction A right, RC: reaction C up, P: load L at B }',
  ),
];

/** Sheets on varying loads, two spans and sloping loads, with the marks decided before. */
export const loadSheets: readonly Sheet[] = [
  triangle(
    'a triangle all the way',
    `def: W = 1.2 kip/ft * 18 ft / 2 ; W = 10.8 kip
     moments about A: RB * 18 ft - W * 12 ft = 0 ; RB = 7.2 kip
     forces up: RA - W + RB = 0 ; RA = 3.6 kip
     station of zero shear: sqrt(2 * 3.6 kip * 18 ft / (1.2 kip/ft)) ; x = 10.4 ft
     maximum moment: 3.6 kip * 10.39 ft * 2/3 ; Mmax = 24.9 kip ft`,
  ),
  triangle(
    'at the middle',
    `moments about A: RB * 18 ft - 10.8 kip * 9 ft = 0 ; RB = 5.4 kip => wrong resultant
     forces up: RA + RB - 10.8 kip = 0 ; RA = 5.4 kip => follows`,
  ),
  triangle(
    'as if uniform',
    `def: W = 1.2 kip/ft * 18 ft = 21.6 kip => wrong magnitude
     moments about A: RB * 18 ft - W * 12 ft = 0 ; RB = 14.4 kip => follows`,
  ),
  triangle(
    'the other third',
    `moments about B: -RA * 18 ft + W * 12 ft = 0 ; RA = 7.2 kip => wrong resultant|lever-arm
     forces up: RA + RB - W = 0 ; RB = 3.6 kip => follows`,
  ),
  triangle(
    'cut at the middle',
    `moments about B: -RA * 18 ft + w * 18 ft / 2 * 6 ft = 0 ; RA = 3.60 kip
     moment at 9 ft: RA * 9 ft - 0.6 kip/ft * 9 ft / 2 * 3 ft ; M = 24.3 kip ft
     shear at 9 ft: RA - 0.5 * 0.6 kip/ft * 9 ft ; V = 0.9 kip
     moment at 9 ft: RA * 9 ft - 0.6 kip/ft * 9 ft / 2 * 4.5 ft ; M = 20.3 kip ft => wrong resultant`,
  ),
  triangle(
    'dividing slip late',
    `moments about A: RB * 18 ft - 129.6 kip ft = 0 ; RB = 7.02 kip => wrong arithmetic
     forces up: RA + RB - 10.8 kip = 0 ; RA = 3.78 kip => follows`,
  ),
  trapezoid(
    'a rectangle and a triangle',
    `moments about A: RB*5 m - 4 kN/m * 5 m * 2.5 m - 0.5 * 6 kN/m * 5 m * (2/3) * 5 m = 0 ; RB = 20 kN
     forces up: RA + RB - 20 kN - 15 kN = 0 ; RA = 15 kN`,
  ),
  trapezoid(
    'two triangles',
    `moments about B: -RA * 5 m + 10 kN * 3.333 m + 25 kN * 1.667 m = 0 ; RA = 15 kN
     forces up: RA + RB = 35 kN ; RB = 20 kN`,
  ),
  trapezoid(
    'the triangle at its near third',
    `moments about A: RB * 5 m - 20 kN * 2.5 m - 15 kN * 1.667 m = 0 ; RB = 15 kN => wrong resultant|lever-arm
     forces up: RA + RB = 35 kN ; RA = 20 kN => follows`,
  ),
  trapezoid(
    'the mean',
    `def: W = (4 kN/m + 10 kN/m)/2 * 5 m = 35 kN
     forces up: RA + RB - W = 0`,
  ),
  trapezoid(
    'the mean, summed wrongly',
    `def: W = (4 kN/m + 10 kN/m)/2 * 5 m = 30 kN => wrong arithmetic`,
  ),
  trapezoid(
    'the heavier end turned round',
    `moments about A: RB * 5 m - 35 kN * 2.143 m = 0 ; RB = 15 kN => wrong resultant
     forces up: RA = 35 kN - 15 kN = 20 kN => follows`,
  ),
  twoSpans(
    'from the moment over B',
    `moment at B: -w * L^2 / 8 ; MB = -75 kip ft
     moments about B on A to B: -RA * 20 ft + 30 kip * 10 ft + MB = 0 ; RA = 11.25 kip
     reaction C up: RA ; RC = 11.25 kip
     forces up: RA + RB + RC - 60 kip = 0 ; RB = 37.5 kip`,
  ),
  twoSpans(
    'three moments',
    `def: 2 * MB * (20 ft + 20 ft) = -1.5 kip/ft * (20 ft)^3 / 4 - 1.5 kip/ft * (20 ft)^3 / 4 ; MB = -75 kip ft
     reaction B up: 10/8 * w * L ; RB = 37.5 kip
     station of zero shear: 11.25 kip / (1.5 kip/ft) ; x = 7.5 ft`,
  ),
  twoSpans(
    'statics alone, by thirds of judgement',
    `forces up: RA + RB + RC - 60 kip = 0 ; RB = 30 kip => wrong solvability`,
  ),
  twoSpans(
    'statics alone, the far reaction forgotten when solving',
    `moments about A: RB * 20 ft + RC * 40 ft - 60 kip * 20 ft = 0 ; RB = 60 kip => wrong solvability`,
  ),
  twoSpans(
    'the wrong divisor',
    `moment at B: -w * L^2 / 12 ; MB = -50 kip ft => wrong magnitude
     moments about B on A to B: -RA * 20 ft + 30 kip * 10 ft + MB = 0 ; RA = 12.5 kip => follows`,
  ),
  twoSpans(
    'as two simple spans',
    `reaction B up: 1.5 kip/ft * 20 ft ; RB = 30 kip => wrong
     forces up: RA + RB + RC = 60 kip ; RA = RC = 15 kip => follows`,
  ),
  twoSpans(
    'three moments, divided wrongly',
    `def: MB * 80 ft = -6000 kip ft^2 ; MB = -80 kip ft => wrong arithmetic`,
  ),
  sloped(
    'components by the angle',
    `forces right: HA + 20 kN * cos 60 deg = 0 ; HA = -10 kN
     moments about A: RC * 6 m - 20 kN * sin(60 deg) * 3 m = 0 ; RC = 8.66 kN
     forces up: RA + RC - 20 kN * sin 60 = 0 ; RA = 8.66 kN`,
  ),
  sloped(
    'left in words',
    `forces right: HA + 10 kN = 0 ; HA = 10 kN left
     forces up: RA + RC = 17.32 kN
     moments about B: RC * 3 m = RA * 3 m ; RA = RC = 8.66 kN`,
  ),
  sloped(
    'sine for cosine',
    `moments about A: RC * 6 m - 20 kN * cos(60 deg) * 3 m = 0 ; RC = 5 kN => wrong magnitude
     forces right: HA + 20 kN * sin(60 deg) = 0 ; HA = -17.3 kN => wrong magnitude`,
  ),
  sloped(
    'nothing along the beam',
    `forces right: HA = 0 => wrong missing-term
     moments about C: RA * 6 m - 17.3 kN * 3 m = 0 ; RA = 8.65 kN`,
  ),
  sloped(
    'summed to the left',
    `forces left: HA - 10 kN = 0 ; HA = 10 kN => wrong sign
     forces left: -HA - 10 kN = 0 ; HA = -10 kN`,
  ),
];
