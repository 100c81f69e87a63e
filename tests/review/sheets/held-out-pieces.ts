import { sheet, type Head, type Sheet } from './sheet.ts';

/** A cantilever, a propped piece on a hinge, a long beam with a hinge, a couple. */
export const pieceMembers: Readonly<Record<string, string>> = {
  H3: `mark: H3
kind: beam
points: { A: 0 m, B: 2 m, C: 3 m }
supports: { A: fixed }
section: { I: 20e6 mm^4 }
material: { E: 200 GPa }
loads: [ { case: D, uniform: 4 kN/m, from: A, to: C }, { case: L, point: 10 kN, at: C } ]
`,
  H4: `mark: H4
kind: beam
points: { A: 0 m, B: 2 m, Q: 4 m, C: 6 m }
supports: { A: fixed, C: roller }
hinges: [ B ]
loads: [ { case: D, uniform: 6 kN/m, from: B, to: C }, { case: L, point: 15 kN, at: Q } ]
`,
  H5: `mark: H5
kind: beam
points: { A: 0 ft, G: 10 ft, B: 20 ft, H: 25 ft, C: 40 ft }
supports: { A: pin, B: roller, C: roller }
hinges: [ H ]
loads: [ { case: D, point: 6 kip, at: G }, { case: L, uniform: 2 kip/ft, from: H, to: C } ]
`,
  H6: `mark: H6
kind: beam
points: { A: 0 ft, B: 8 ft, C: 20 ft }
supports: { A: pin, C: roller }
loads: [ { case: L, couple: 40 kip ft, at: B, turn: clockwise } ]
`,
};

function on(member: string, names: string) {
  return (title: string, loads: string, lines: string, head: Head = {}): Sheet =>
    sheet(
      `${member}: ${title}`,
      member,
      { names, ...(loads === '' ? {} : { loads }), ...head },
      lines,
    );
}

const [cantilever, propped, long, turned] = [
  on(
    'H3',
    '{ RA: reaction A up, MA: reaction A counterclockwise, P: load L at C, E: modulus, I: inertia }',
  ),
  on(
    'H4',
    '{ RA: reaction A up, MA: reaction A counterclockwise, RC: reaction C up, VB: shear at B }',
  ),
  on(
    'H5',
    '{ RA: reaction A up, RB: reaction B up, RC: reaction C up, H: shear at H }',
  ),
  on('H6', '{ RA: reaction A up, RC: reaction C up, M0: load L at B }'),
];

/** Sheets on cantilevers, hinges and couples, with the marks decided before. */
export const pieceSheets: readonly Sheet[] = [
  cantilever(
    'point load',
    'L',
    `forces up: RA - 10 kN = 0 ; RA = 10 kN
     moments about A: MA - P * 3 m = 0 ; MA = 30 kN·m
     moment at A: -MA ; M = -30 kN m
     moment at B: -10 kN * 1 m ; M = -10 kN·m`,
  ),
  cantilever(
    'uniform load',
    'D',
    `forces up: RA = 4 kN/m * 3 m = 12 kN
     moments about A: MA = 4 kN/m * (3 m)²/2 = 18 kN·m
     shear at B: 4 kN/m * 1 m ; VB = 4 kN
     moment at B: -4 kN/m * 1 m * 0.5 m ; MB = 2 kN·m hogging`,
  ),
  cantilever(
    'the whole length for the arm',
    'D',
    `moments about A: MA - 4 kN/m * 3 m * 3 m = 0 ; MA = 36 kN m => wrong resultant
     moment at A: -MA ; M = -36 kN m => follows`,
  ),
  cantilever(
    'no moment at the wall',
    'L',
    `moments about A: P * 3 m = 0 => wrong missing-term
     forces up: RA = P`,
  ),
  cantilever(
    'the reaction turned',
    'L',
    `forces up: RA - P = 0 ; RA = 10 kN
     moments about C: MA + RA * 3 m = 0 ; MA = -30 kN m => wrong sign`,
  ),
  cantilever(
    'deflection of the tip',
    'L',
    `deflection at C: P * (3 m)^3 / (3 * E * I) ; y = 22.5 mm
     deflection at C: 10 kN (3 m)^3 / (3 * 4000 kN m^2) ; d = 0.0225 m
     deflection at C: P * (3 m)^3 / (3 * E * I) ; y = 22.5 mm down
     deflection at C: P * (3 m)^3 / (3 * E * I) ; y = 22.5 mm up => wrong sign
     deflection at C: P * (3 m)^3 / (8 * E * I) ; y = 8.44 mm => wrong magnitude`,
  ),
  cantilever(
    'both cases',
    'all',
    `forces up: RA - 10 kN - 12 kN = 0 ; RA = 22 kN
     moments about A: MA - 10 kN * 3 m - 12 kN * 1.5 m = 0 ; MA = 48 kN·m
     moment at B: -10 kN (1 m) - 4 kN/m (1 m) (0.5 m) ; MB = -12 kN·m`,
  ),
  cantilever(
    'millimetres',
    'L',
    `moments about A: MA - 10 kN * 3000 mm = 0 ; MA = 30 kN m
     moments about A: MA - 10 kN * 3000 m = 0 ; MA = 30000 kN m => wrong unit`,
  ),
  propped(
    'the hung piece first',
    'D',
    `moments about B on B to C: RC * 4 m - 24 kN * 2 m = 0 ; RC = 12 kN
     forces up: RA + RC - 24 kN = 0 ; RA = 12 kN
     moments about A: MA + RC * 6 m - 24 kN * 4 m = 0 ; MA = 24 kN m`,
  ),
  propped(
    'by the force in the hinge',
    'D',
    `moments about C on B to C: -VB * 4 m + 24 kN * 2 m = 0 ; VB = 12 kN
     forces up on A to B: RA - VB = 0 ; RA = 12 kN
     moments about A on A to B: MA - VB * 2 m = 0 ; MA = 24 kN·m`,
  ),
  propped(
    'point load',
    'L',
    `moments about B on B to C: 4 m * RC = 15 kN * 2 m ; RC = 7.5 kN
     moments about A: MA - 15 kN * 4 m + RC * 6 m = 0 ; MA = 15 kN m
     forces up: RA = 15 kN - RC = 7.5 kN
     moment at A: -MA ; M = -15 kN m
     moment at B: RA * 2 m - MA ; M = 0`,
  ),
  propped(
    'the arm from the wall',
    'L',
    `moments about B on B to C: RC * 4 m - 15 kN * 4 m = 0 ; RC = 15 kN => wrong lever-arm
     forces up: RA + RC - 15 kN = 0 ; RA = 0 kN => follows`,
  ),
  propped(
    'half the arm',
    'D',
    `moments about A on A to B: MA - 12 kN * 1 m = 0 ; MA = 12 kN m => wrong lever-arm
     moment at A: -MA ; M = -12 kN m => follows`,
  ),
  propped(
    'the force in the hinge left out',
    'D',
    `forces up on B to C: RC - 24 kN = 0 ; RC = 24 kN => wrong missing-term
     forces up: RA + RC - 24 kN = 0 ; RA = 0 => follows`,
  ),
  long(
    'from the hinge outward',
    'L',
    `moments about H on H to C: RC * 15 ft - 30 k * 7.5 ft = 0 ; RC = 15 k
     forces up on H to C: H + RC - 30 kips = 0 ; H = 15 kips
     moments about A on A to H: RB * 20 ft - H * 25 ft = 0 ; RB = 18.75 kip
     forces up: RA + RB + RC = 2 klf * 15 ft ; RA = -3.75 kip
     moment at B: RA * 20 ft ; M = -75 kip-ft`,
  ),
  long(
    'nothing at C',
    'D',
    `moments about H on H to C: RC * 15 ft = 0 ; RC = 0
     moments about A: RB * 20 ft - 6 kip * 10 ft = 0 ; RB = 3 kip
     forces up: RA + RB - 6 kip ; RA = 3 kip`,
  ),
  long(
    'the hinge lifts',
    'L',
    `moments about A on A to H: RB * 20 ft + 15 kip * 25 ft = 0 ; RB = -18.75 kip => wrong sign
     forces up: RA + RB + 15 kip = 30 kip ; RA = 33.75 kip => follows`,
  ),
  long(
    'greatest moments',
    'all',
    `maximum moment: 15 kip * 5 ft ; Mmax = 75 kip ft
     maximum moment: 2 kip/ft * (15 ft)^2 / 8 ; Mmax = 56.3 kip ft sagging
     moment at G: -0.75 kip * 10 ft ; M = -7.5 kip ft`,
  ),
  turned(
    'both sides of the couple',
    '',
    `moments about A: RC * 20 ft - 40 kip ft = 0 ; RC = 2 kip
     forces up: RA + RC = 0 ; RA = -2 kip
     moment at B: RA * 8 ft ; M = -16 kip ft
     moment at B: RA * 8 ft + 40 kip ft ; M = 24 kip ft`,
  ),
  turned(
    'turned the other way',
    '',
    `moments about A: RC * 20 ft + 40 kip ft = 0 ; RC = -2 kip => wrong sign
     forces up: RA = -RC ; RA = 2 kip => follows`,
  ),
  turned(
    'a couple times an arm',
    '',
    `moments about A: RC * 20 ft - 40 kip ft * 8 ft = 0 ; RC = 16 kip => wrong unit
     forces up: RA + RC = 0 ; RA = -16 kip => follows`,
  ),
  turned(
    'down in words',
    '',
    `moments about C: M0 + RA * 20 ft = 0 ; RA = 2 kip down
     forces up: RC - 2 kip = 0 ; RC = 2 kip up`,
  ),
  turned(
    'the couple as a force',
    '',
    `forces up: RA + RC - 40 kip = 0 => wrong extra-term
     moments about A: RC = 40 kip ft / 20 ft = 2 kip`,
  ),
  turned(
    'the couple forgotten',
    '',
    `moments about A: RC * 20 ft = 0 ; RC = 0 => wrong missing-term
     forces up: RA + RC = 0 ; RA = 0 => follows`,
  ),
];
