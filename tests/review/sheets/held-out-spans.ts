import { sheet, type Head, type Sheet } from './sheet.ts';

/** The loads that every sheet of these may be worked under. */
export const heldOutLoads = `cases:
  D: { title: Dead, kind: dead }
  L: { title: Live, kind: live }
combinations: [ { mark: "1.2D + 1.6L", factors: { D: 1.2, L: 1.6 } } ]
`;

/** Beams on two supports: SI, with an overhang, in feet and inches, symmetric. */
export const spanMembers: Readonly<Record<string, string>> = {
  H1: `mark: H1
kind: beam
points: { A: 0 m, B: 2.4 m, C: 6 m }
supports: { A: pin, C: roller }
loads: [ { case: D, uniform: 12 kN/m, from: A, to: C }, { case: L, point: 30 kN, at: B } ]
`,
  H2: `mark: H2
kind: beam
points: { A: 0 ft, B: 12 ft, C: 16 ft }
supports: { A: pin, B: roller }
loads: [ { case: D, uniform: 0.5 kip/ft, from: A, to: C }, { case: L, point: 3 kip, at: C } ]
`,
  H11: `mark: H11
kind: beam
points: { A: 0 ft, B: 6 ft 6 in, C: 14 ft }
supports: { A: pin, C: roller }
loads: [ { case: D, uniform: 60 plf, from: A, to: C }, { case: L, point: 1250 lb, at: B } ]
`,
  H12: `mark: H12
kind: beam
points: { A: 0 ft, B: 6 ft, C: 12 ft, D: 18 ft }
supports: { A: pin, D: roller }
section: { I: 200 in^4 }
material: { E: 29000 ksi }
loads: [ { case: L, point: 9 kip, at: [ B, C ] } ]
`,
};

const h1 =
  '{ RA: reaction A up, RC: reaction C up, P: load L at B, W: resultant of D, L: length A to C }';
const h2 =
  '{ RA: reaction A up, RB: reaction B up, W: resultant of D, P: load L at C }';
const h11 = '{ RA: reaction A up, RC: reaction C up, W: resultant of D }';
const h12 = '{ RA: reaction A up, RD: reaction D up, E: modulus, I: inertia }';

function on(member: string, names: string) {
  return (title: string, loads: string, lines: string, head: Head = {}): Sheet =>
    sheet(
      `${member}: ${title}`,
      member,
      { names, ...(loads === '' ? {} : { loads }), ...head },
      lines,
    );
}

const [spanH1, spanH2, spanH11, spanH12] = [
  on('H1', h1),
  on('H2', h2),
  on('H11', h11),
  on('H12', h12),
];
const both = '1.2D + 1.6L';

const simple: readonly Sheet[] = [
  spanH1(
    'half each',
    'D',
    `def: W = 12 kN/m * 6 m = 72 kN
     note: by symmetry
     reaction A up: W / 2 ; RA = RC = 36 kN
     forces up: RA + RC - W = 0`,
  ),
  spanH1(
    'the well-known formula',
    'D',
    `maximum moment: 12 kN/m * (6 m)^2 / 8 ; Mmax = 54 kN m
     station of zero shear: 6 m / 2 ; x = 3 m
     moment at 3 m: 36 kN * 3 m − 12 kN/m × 3 m × 1.5 m ; M = 54 kN·m`,
  ),
  spanH1(
    'ratios and Pab/L',
    'L',
    `reaction A up: P * 3.6/6 ; RA = 18 kN
     reaction C up: P * 2.4 m / L ; RC = 12 kN
     moment at B: P * 2.4 m * 3.6 m / L ; M = 43.2 kN m`,
  ),
  spanH1(
    'clockwise',
    'L',
    `moments about C: RA * 6 m - 30 kN * 3.6 m = 0 ; RA = 18 kN
     moments about A: 30 kN * 2.4 m - RC * 6 m = 0 ; RC = 12 kN`,
    { signs: '{ moments: clockwise }' },
  ),
  spanH1(
    'either side of the load',
    'L',
    `shear left of B: RA ; V = 18 kN
     shear right of B: RA - P ; V = -12 kN
     shear at B: -RC ; V = -12 kN
     shear at B: RA ; V = 18 kN`,
  ),
  spanH1(
    'factored loads first',
    both,
    `def: wu = 1.2 * 12 kN/m = 14.4 kN/m
     def: Pu = 1.6 * 30 kN ; Pu = 48 kN
     moments about A: RC * 6 m - wu * 6 m * 3 m - Pu * 2.4 m = 0 ; RC = 62.4 kN
     forces up: RA + RC - wu * 6 m - Pu = 0 ; RA = 72 kN
     moment at B: RA * 2.4 m - wu * (2.4 m)^2 / 2 ; Mu = 131 kN m`,
  ),
  spanH1(
    'dead load left unfactored',
    both,
    `moments about A: RC * 6 m - 12 kN/m * 6 m * 3 m - 48 kN * 2.4 m = 0 ; RC = 55.2 kN => wrong magnitude
     forces up: RA + RC - 86.4 kN - 48 kN = 0 ; RA = 79.2 kN => follows`,
  ),
  spanH1(
    'factored reactions by superposition',
    both,
    `reaction A up: 1.2 * 36 kN + 1.6 * 18 kN ; RA = 72.0 kN
     reaction C up: 1.2 * 36 kN + 1.6 * 12 kN = 62.4 kN
     maximum moment: RA * 2.4 m - 14.4 kN/m * 2.4 m * 1.2 m ; M = 131.3 kN m`,
  ),
  spanH1(
    'factors swapped',
    both,
    `reaction A up: 1.6 * 36 kN + 1.2 * 18 kN ; RA = 79.2 kN => wrong magnitude
     forces up: RA + RC - 86.4 kN - 48 kN = 0 ; RC = 55.2 kN => follows`,
  ),
  spanH1(
    'a slip in dividing',
    'L',
    `moments about A: RC * 6 m - 30 kN * 2.4 m = 0 ; RC = 14.0 kN => wrong arithmetic
     forces up: RA + RC - P = 0 ; RA = 16 kN => follows
     moment at B: RA * 2.4 m ; M = 38.4 kN m => follows`,
  ),
  spanH1(
    'another value taken on',
    'L',
    `moments about A: RC * 6 m - 30 kN * 2.4 m = 0 ; RC = 12 kN
     forces up: RA + 13 kN - 30 kN = 0 ; RA = 17 kN => wrong carried
     moment at B: RA * 2.4 m ; M = 40.8 kN m => follows`,
  ),
  spanH1(
    'a length left out',
    'D',
    `moments about A: RC * 6 m - 12 kN/m * 3 m = 0 ; RC = 6 kN => wrong unit
     forces up: RA + RC - 72 kN = 0 ; RA = 66 kN => follows`,
  ),
  spanH1(
    'the resultant at the far end',
    'D',
    `moments about A: RC * 6 m - 72 kN * 6 m = 0 ; RC = 72 kN => wrong resultant
     forces up: RA + RC - 72 kN = 0 ; RA = 0 kN => follows`,
  ),
  spanH1(
    'the load lifted, twice',
    'L',
    `moments about A: RC * L + P * 2.4 m = 0 ; RC = -12 kN => wrong sign
     forces up: RA + RC + P = 0 ; RA = -18 kN => wrong sign`,
  ),
  spanH1(
    'the load forgotten',
    'all',
    `moments about A: RC * 6 m - 72 kN * 3 m = 0 ; RC = 36 kN => wrong missing-term
     forces up: RA + RC - 72 kN - 30 kN = 0 ; RA = 66 kN => follows`,
  ),
  spanH1(
    'no case named',
    '',
    `moments about A: RC * 6 m - 30 kN * 2.4 m = 0 ; RC = 12 kN
     forces up: RA + RC = 30 kN ; RA = 18 kN`,
  ),
  spanH1(
    'lines that cannot be read',
    'L',
    `moments about A: RC * * 6 m = 0 => unread syntax
     forces up: RA + RX - 30 kN = 0 => unread symbol
     torsion at B: 3 kN m => unread step
     moments about A: RC * 6 m - 30 kN * 2.4 m = 0 ; RC = 12 kN`,
  ),
  spanH1(
    'units left out',
    'L',
    `moments about A: -30 * 2.4 m + RC * 6 m = 0 ; RC = 12 kN => wrong unit
     forces up: RA + RC - 30 kN = 0 ; RA = 18 => wrong unit`,
  ),
];

const overhang: readonly Sheet[] = [
  spanH2(
    'k and k-ft',
    'D',
    `def: W = 0.5 k/ft * 16 ft ; W = 8 k
     moments about A: RB (12 ft) - 8 k (8 ft) = 0 ; RB = 5.33 k
     forces up: RA = 8 k - 5.33 k = 2.67 k
     moment at B: -0.5 klf * 4 ft * 2 ft ; M = -4 k-ft`,
  ),
  spanH2(
    'in two pieces',
    'D',
    `moments about A: RB * 12 ft - 0.5 kip/ft * 12 ft * 6 ft - 0.5 kip/ft * 4 ft * 14 ft = 0 ; RB = 5.33 kip
     moments about B: -RA * 12 ft + 0.5 kip/ft * 12 ft * 6 ft - 0.5 kip/ft * 4 ft * 2 ft = 0 ; RA = 2.67 kip`,
  ),
  spanH2(
    'the overhang turned',
    'D',
    `moments about B: -RA * 12 ft + 36 kip ft + 0.5 kip/ft * 4 ft * 2 ft = 0 ; RA = 3.33 kip => wrong sign
     forces up: RA + RB = 8 kip ; RB = 4.67 kip => follows`,
  ),
  spanH2(
    'where the shear is nothing',
    'D',
    `station of zero shear: 2.667 kip / 0.5 kip/ft ; x = 5.33 ft
     maximum moment: 2.667 kip * 5.333 ft / 2 ; Mmax = 7.11 kip ft
     moment at B: -0.5 kip/ft * (4 ft)²/2 ; MB = 4 kip ft hogging`,
  ),
  spanH2(
    'held down',
    'L',
    `moments about B: RA * 12 ft + 3 kip * 4 ft = 0 ; RA = 1 kip down
     forces up: RA + RB = 3 kip ; RB = 4.00 kip
     moment at B: RA * 12 ft ; M = 12 kip ft`,
  ),
  spanH2(
    'held up instead',
    'L',
    `moments about B: -RA * 12 ft - P * 4 ft = 0 ; RA = 1 kip up => wrong sign
     forces up: RA + RB - 3 kip = 0 ; RB = 2 kip => follows`,
  ),
  spanH2(
    'sagging where it hogs',
    'L',
    `moment at B: -3 kip * 4 ft ; M = 12 kip ft hogging
     moment at B: -3 kip * 4 ft ; M = 12 kip ft sagging => wrong sign`,
  ),
  spanH2(
    'both cases',
    'all',
    `moments about A: RB * 12 ft - 8 kip * 8 ft - 3 kip * 16 ft = 0 ; RB = 9.33 kip
     forces up: RA = 8 kip + 3 kip - 9.33 kip = 1.67 kip
     maximum moment: -3 kip * 4 ft - 0.5 kip/ft * (4 ft)^2 / 2 ; M = -16 kip ft
     maximum moment: 1.667 kip * 3.333 ft / 2 ; M = 2.78 kip ft sagging`,
  ),
  spanH2(
    'the overhang forgotten',
    'D',
    `moments about A: RB * 12 ft - 6 kip * 6 ft = 0 ; RB = 3 kip => wrong missing-term
     forces up: RA + RB - 8 kip = 0 ; RA = 5 kip => follows`,
  ),
  spanH2(
    'a reaction that has no arm',
    'D',
    `moments about A: RB * 12 ft - 8 kip * 8 ft - RA * 12 ft = 0 => wrong extra-term|lever-arm`,
  ),
  spanH2(
    'rounded early',
    'D',
    `moments about A: RB * 12 ft - 8 kip * 8 ft = 0 ; RB = 5.3 kip => right rounding
     forces up: RA + RB - 8 kip = 0 ; RA = 2.7 kip => follows`,
  ),
];

const feet: readonly Sheet[] = [
  spanH11(
    'feet and inches',
    'L',
    `moments about A: RC * 14'-0" - 1,250 lb * 6'-6" = 0 ; RC = 580 lb
     forces up: RA + RC - 1,250 lb = 0 ; RA = 670 lb
     moment at B: RA * 6.5 ft ; M = 4,350 lb-ft`,
  ),
  spanH11(
    'inches',
    'L',
    `moments about A: RC * 168 in - 1250 lb * 78 in = 0 ; RC = 580 lb
     moment at B: 669.6 lb * 78 in ; M = 52,230 lb in`,
  ),
  spanH11(
    'feet for inches',
    'L',
    `moments about A: RC * 14 ft - 1250 lb * 78 ft = 0 ; RC = 6964 lb => wrong unit
     forces up: RA + RC - 1250 lb = 0 ; RA = -5714 lb => follows`,
  ),
  spanH11(
    '6\'-6" as 6.6 ft',
    'L',
    `moments about A: RC * 14 ft - 1250 lb * 6.6 ft = 0 ; RC = 589 lb => wrong lever-arm
     forces up: RA + RC - 1250 lb = 0 ; RA = 661 lb => follows`,
  ),
  spanH11(
    'pounds a foot',
    'D',
    `def: W = 60 plf * 14 ft = 840 lb
     reaction A up: W/2 ; RA = RC = 420 lb
     maximum moment: 60 plf (14 ft)^2 / 8 ; M = 1470 lb-ft
     maximum moment: 60 plf (14 ft)^2 / 8 ; M = 17,640 lb in
     maximum moment: 60 plf (14 ft)^2 / 8 ; M = 1470 lb in => wrong unit`,
  ),
  spanH11(
    'the sign for pounds, then kips',
    'L',
    `moments about A: RC * 14 ft - 1250# * 6.5 ft = 0 ; RC = 580#
     forces up: RA + RC = 1.25 k ; RA = 0.670 k`,
  ),
];

const symmetric: readonly Sheet[] = [
  spanH12(
    'by symmetry',
    '',
    `note: symmetric
     forces up: RA + RD - 18 kip = 0 ; RA = RD = 9 kip
     moment at B: 9 kip * 6 ft ; M = 54 kip ft
     shear at 9 ft: RA - 9 kip ; V = 0
     maximum moment: RA * 9 ft - 9 kip * 3 ft ; M = 54 kip-ft`,
  ),
  spanH12(
    'not halved',
    '',
    `forces up: RA + RD - 18 kip = 0 ; RA = RD = 18 kip => wrong arithmetic
     moment at B: RA * 6 ft ; M = 108 kip ft => follows`,
  ),
  spanH12(
    'deflection',
    '',
    `deflection at 9 ft: 23 * 9 kip * (18 ft)^3 / (648 * E * I) ; y = 0.555 in
     deflection at 9 ft: 23 * 9 kip * (18 ft)^3 / (648 * E * I) ; y = 0.555 in down
     deflection at 9 ft: 23 * 9 kip * (18 ft)^3 / (648 * E * I) ; y = 0.555 ft => wrong unit`,
  ),
  spanH12(
    'one load of two',
    '',
    `moments about A: RD * 18 ft - 9 kip * 6 ft = 0 ; RD = 3 kip => wrong missing-term
     forces up: RA + RD - 9 kip - 9 kip = 0 ; RA = 15 kip => follows`,
  ),
  spanH12(
    'both at one place',
    '',
    `moments about A: RD * 18 ft - 9 kip * 6 ft - 9 kip * 6 ft = 0 ; RD = 6 kip => wrong lever-arm
     forces up: RA + RD - 18 kip = 0 ; RA = 12 kip => follows`,
  ),
  spanH12(
    'lumped',
    '',
    `moments about A: RD * 18 ft - 18 kip * 9 ft = 0 ; RD = 9 kip
     moments about D: 18 kip (9 ft) - RA (18 ft) = 0 ; RA = 9 kip`,
  ),
  spanH12(
    'two equations',
    '',
    `forces up: RA + RD = 18 kip
     moments about B: -RA * 6 ft - 9 kip * 6 ft + RD * 12 ft = 0 ; RA = 9 kip ; RD = 9 kip`,
  ),
];

/** Sheets on beams of two supports, with the marks decided before they were marked. */
export const spanSheets: readonly Sheet[] = [
  ...simple,
  ...overhang,
  ...feet,
  ...symmetric,
];
