import { sheet, type Sheet } from './sheet.ts';

/** Members of other kinds, by mark: cantilevers, hinges, couples, varying loads, inclined forces, continuous beams. */
export const otherMembers: Readonly<Record<string, string>> = {
  // Uniform load over the whole: RA = RC = 2.625 kip, greatest moment 13.78 kip·ft.
  U1: 'mark: U1\nkind: beam\npoints: { A: 0 ft, B: 6 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ { case: D, uniform: 0.25 kip/ft, from: A, to: C } ]\n',
  // Triangle from 0 at A to 6 kN/m at B: RA = 9, RB = 18 kN.
  T1: 'mark: T1\nkind: beam\npoints: { A: 0 m, B: 9 m }\nsupports: { A: pin, B: roller }\nloads: [ { case: L, varying: [ 0 kN/m, 6 kN/m ], from: A, to: B } ]\n',
  // Trapezoid from 2 to 5 kN/m over 6 m: W = 21; about A 6·6/2·... RA = 9, RB = 12 kN.
  T2: 'mark: T2\nkind: beam\npoints: { A: 0 m, B: 6 m }\nsupports: { A: pin, B: roller }\nloads: [ { case: L, varying: [ 2 kN/m, 5 kN/m ], from: A, to: B } ]\n',
  // Cantilever, fixed at A: RA = 12 + 8 = 20 kN, MA = 12·3 + 8·2 = 52 kN·m counterclockwise.
  K1: 'mark: K1\nkind: beam\npoints: { A: 0 m, B: 3 m, C: 4 m }\nsupports: { A: fixed }\nloads: [ { case: L, point: 12 kN, at: B }, { case: L, uniform: 2 kN/m, from: A, to: C } ]\n',
  // Couple 30 kip·ft clockwise at B: RA = -1.5 kip, RC = 1.5 kip.
  Q1: 'mark: Q1\nkind: beam\npoints: { A: 0 ft, B: 8 ft, C: 20 ft }\nsupports: { A: pin, C: roller }\nloads: [ { case: L, couple: 30 kip ft, at: B, turn: clockwise } ]\n',
  // Hinge at H, fixed at A: RC = 6, hinge shear 4 = 10 - 6; RA = 4, MA = 16.
  G1: 'mark: G1\nkind: beam\npoints: { A: 0 m, H: 4 m, B: 7 m, C: 9 m }\nsupports: { A: fixed, C: roller }\nhinges: [ H ]\nloads: [ { case: L, point: 10 kN, at: B } ]\n',
  // Inclined force, 10 kN at 3-4-5 down to the right at B (2 m of 5 m): HA = -6, RC = 3.2, RA = 4.8.
  N1: 'mark: N1\nkind: beam\npoints: { A: 0 m, B: 2 m, C: 5 m }\nsupports: { A: pin, C: roller }\nloads: [ { case: L, point: 10 kN, at: B, direction: -53.13010235415598 deg } ]\n',
  // Overhang with two loads: about A 9·4 + 3·15 = 81; RB = 8.1, RA = 3.9 kip.
  O1: 'mark: O1\nkind: beam\npoints: { A: 0 ft, D: 4 ft, B: 10 ft, C: 15 ft }\nsupports: { A: pin, B: roller }\nloads: [ { case: L, point: 9 kip, at: D }, { case: L, point: 3 kip, at: C } ]\n',
  // Two equal spans, uniform: outer 3/8 wl = 9, middle 10/8 wl = 30 kN.
  C1: 'mark: C1\nkind: beam\npoints: { A: 0 m, B: 6 m, C: 12 m }\nsupports: { A: pin, B: roller, C: roller }\nmaterial: { E: 200 GPa }\nsection: { I: 1e8 mm^4 }\nloads: [ { case: L, uniform: 4 kN/m, from: A, to: C } ]\n',
  // Two cases: L 8.4 kip at B, D 0.25 kip/ft on all.
  X1: 'mark: X1\nkind: beam\npoints: { A: 0 ft, B: 6 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ { case: L, point: 8.4 kip, at: B }, { case: D, uniform: 0.25 kip/ft, from: A, to: C } ]\n',
};

const two = '{ RA: reaction A up, RC: reaction C up }';
const ends = '{ RA: reaction A up, RB: reaction B up }';

const uniform: readonly Sheet[] = [
  sheet(
    'U1 whole',
    'U1',
    { names: two },
    `
    moments about A: RC*21 ft - 0.25 kip/ft * 21 ft * 10.5 ft = 0 ; RC = 2.63 kip
    forces up: RA + RC = 0.25 klf (21 ft) ; RA = 2.62 kip
    moment at 10.5 ft: RA * 10.5 ft - 0.25 kip/ft * 10.5 ft * 5.25 ft ; M = 13.8 kip ft
    maximum moment: 0.25 kip/ft * (21 ft)^2 / 8 ; M = 13.8 k-ft
    station of zero shear: RA / (0.25 kip/ft) ; x = 10.5 ft`,
  ),
  sheet(
    'U1 split at B',
    'U1',
    { names: two },
    `
    moments about A: RC*21 ft = 0.25 klf * 6 ft * 3 ft + 0.25 klf*15 ft*13.5 ft ; RC = 2.625 kip
    moments about B: -RA*6 ft + 1.5 kip * 3 ft - 3.75 kip * 7.5 ft + RC*15 ft = 0`,
  ),
  sheet(
    'U1 lumped',
    'U1',
    { names: two },
    `
    def: W = 0.25 kip/ft * 21 ft ; W = 5.25 kip
    moments about C: -RA * 21 ft + W * 21 ft / 2 = 0 ; RA = 2.63 kip
    forces up: RA + RC - 5.25 kip = 0 ; RC = 2.62 kip`,
  ),
  sheet(
    'U1 by symmetry',
    'U1',
    { names: two },
    `
    note: by symmetry
    forces up: RA + RC = 5.25 kip ; RA = RC = 2.625 kip
    resultant of D: 0.25 kip/ft * 21 ft ; 5.25 kip
    reaction A up: 5.25 kip / 2 ; 2.625 kip`,
  ),
  sheet(
    'U1 plf and pounds',
    'U1',
    { names: two },
    `
    moments about A: 250 plf * 21 ft * 10.5 ft - RC * 21 ft ; RC = 2,625 lb
    moments about A: RC = 250 plf * (21 ft)^2 / 2 / 21 ft = 2625 lb`,
  ),
  sheet(
    'U1 wrong place',
    'U1',
    { names: two },
    `
    moments about A: RC*21 ft - 5.25 kip * 14 ft = 0 ; RC = 3.5 kip => wrong resultant
    forces up: RA + RC = 5.25 kip ; RA = 1.75 kip => follows`,
  ),
  sheet(
    'U1 half the size',
    'U1',
    { names: two },
    `
    moments about A: RC*21 ft - 2.625 kip * 10.5 ft = 0 ; RC = 1.31 kip => wrong resultant
    forces up: RA + RC - 2.625 kip = 0 ; RA = 1.31 kip => wrong resultant`,
  ),
  sheet(
    'U1 left out',
    'U1',
    { names: two },
    `
    moments about A: RC*21 ft = 0 => wrong missing-term
    moment at B: RA*6 ft ; M = 15.75 kip ft => wrong missing-term`,
  ),
  sheet(
    'U1 turned',
    'U1',
    { names: two },
    `
    moments about A: RC*21 ft + 5.25 kip*10.5 ft = 0 ; RC = -2.63 kip => wrong sign
    moment at B: 2.625 kip * 6 ft + 1.5 kip * 3 ft ; M = 20.25 kip ft => wrong sign`,
  ),
  sheet(
    'U1 one stretch forgotten',
    'U1',
    { names: two },
    `
    moments about A: RC*21 ft - 0.25 klf*15 ft*13.5 ft = 0 ; RC = 2.41 kip => wrong missing-term`,
  ),
];

const varying: readonly Sheet[] = [
  sheet(
    'T1 triangle',
    'T1',
    { names: ends },
    `
    moments about A: RB*9 m - 6 kN/m * 9 m / 2 * 6 m = 0 ; RB = 18 kN
    forces up: RA + RB = 1/2 * 6 kN/m * 9 m ; RA = 9.0 kN
    shear at 3 m: RA - 1/2 * 2 kN/m * 3 m ; V = 6 kN
    moment at 3 m: RA*3 m - 3 kN * 1 m ; M = 24 kN·m
    resultant of L: 27 kN`,
  ),
  sheet(
    'T1 other styles',
    'T1',
    { names: ends },
    `
    moments about B: -RA*9 m + 27 kN * 9 m/3 = 0 ; RA = 9 kN
    moments about B: RA = 27 kN / 3 = 9 kN
    moments about A: 0.5*6 kN/m*9 m*(2/3*9 m) = 9 m RB ; RB = 18.0 kN`,
  ),
  sheet(
    'T1 wrong third',
    'T1',
    { names: ends },
    `
    moments about A: RB*9 m - 27 kN * 3 m = 0 ; RB = 9 kN => wrong lever-arm|resultant
    forces up: RA + RB - 27 kN = 0 ; RA = 18 kN => follows`,
  ),
  sheet(
    'T1 half forgotten',
    'T1',
    { names: ends },
    `
    moments about A: RB*9 m - 54 kN*6 m = 0 ; RB = 36 kN => wrong resultant
    forces up: RA + RB - 6 kN/m*9 m = 0 ; RA = 18 kN => wrong resultant`,
  ),
  sheet(
    'T1 middle',
    'T1',
    { names: ends },
    `
    moments about A: RB*9 m - 27 kN * 4.5 m = 0 ; RB = 13.5 kN => wrong resultant`,
  ),
  sheet(
    'T2 rectangle and triangle',
    'T2',
    { names: ends },
    `
    moments about A: RB*6 m - 2 kN/m*6 m*3 m - 3 kN/m*6 m/2*4 m = 0 ; RB = 12 kN
    forces up: RA + RB = (2 kN/m + 5 kN/m)/2 * 6 m ; RA = 9 kN`,
  ),
  sheet(
    'T2 two triangles',
    'T2',
    { names: ends },
    `
    moments about A: RB*6 m - 6 kN*2 m - 15 kN*4 m = 0 ; RB = 12 kN
    moments about B: RA*6 m - 12 kN*3 m - 9 kN*2 m = 0 ; RA = 9 kN`,
  ),
  sheet(
    'T2 lumped',
    'T2',
    { names: ends },
    `
    moments about A: RB*6 m - 72 kN m = 0 ; RB = 12 kN
    moments about A: 6 m RB = 21 kN * 3.429 m ; RB = 12 kN`,
  ),
  sheet(
    'T2 triangle at the wrong third',
    'T2',
    { names: ends },
    `
    moments about A: RB*6 m - 12 kN*3 m - 9 kN*2 m = 0 ; RB = 9 kN => wrong lever-arm|resultant`,
  ),
  sheet(
    'T2 triangle left out',
    'T2',
    { names: ends },
    `
    moments about A: RB*6 m - 12 kN*3 m = 0 ; RB = 6 kN => wrong missing-term`,
  ),
  sheet(
    'T2 triangle turned',
    'T2',
    { names: ends },
    `
    forces up: RA + RB - 12 kN + 9 kN = 0 ; RA = -9 kN => wrong sign`,
  ),
];

const fixed = '{ RA: reaction A up, MA: reaction A counterclockwise }';

const cantilevers: readonly Sheet[] = [
  sheet(
    'K1 as taught',
    'K1',
    { names: fixed },
    `
    forces up: RA - 12 kN - 2 kN/m * 4 m = 0 ; RA = 20 kN
    moments about A: MA - 12 kN*3 m - 8 kN*2 m = 0 ; MA = 52 kN·m
    moment at A: -52 kN m ; M = 52 kN m hogging
    shear at 3.5 m: 2 kN/m * 0.5 m ; V = 1 kN`,
  ),
  sheet(
    'K1 about the tip',
    'K1',
    { names: fixed },
    `
    forces up: RA = 12 kN + 8 kN = 20 kN
    moments about C: MA - RA*4 m + 12 kN*1 m + 8 kN*2 m = 0 ; MA = 52 kN m counterclockwise`,
  ),
  sheet(
    'K1 clockwise symbol',
    'K1',
    { names: '{ RA: reaction A up, M0: reaction A clockwise }' },
    `
    moments about A: M0 + 12 kN*3 m + 8 kN*2 m = 0 ; M0 = -52 kN m
    moment at B: -2 kN/m * 1 m * 0.5 m ; M = 1 kN m`,
  ),
  sheet(
    'K1 plain magnitude',
    'K1',
    { names: fixed },
    `
    moment at A: 12 kN*3 m + 8 kN*2 m ; M = 52 kN m
    shear right of A: 20 kN ; 20 kN`,
  ),
  sheet(
    'K1 slips',
    'K1',
    { names: fixed },
    `
    forces up: RA - 12 kN = 0 ; RA = 12 kN => wrong missing-term
    moments about A: MA - 12 kN*3 m + 8 kN*2 m = 0 ; MA = 20 kN m => wrong sign
    moments about A: MA - 12 kN*3 m - 8 kN*4 m = 0 ; MA = 68 kN m => wrong lever-arm|resultant
    moments about A: MA - 12 kN*4 m - 8 kN*2 m = 0 ; MA = 64 kN m => wrong lever-arm
    moments about A: 12 kN*3 m + 8 kN*2 m = 0 => wrong missing-term
    moment at A: 52 kN m ; M = 52 kN m sagging => wrong sign`,
  ),
  sheet(
    'K1 arithmetic',
    'K1',
    { names: fixed },
    `
    moments about A: MA - 12 kN*3 m - 8 kN*2 m = 0 ; MA = 48 kN m => wrong arithmetic
    forces up: RA = 12 kN + 8 kN = 22 kN => wrong arithmetic`,
  ),
];

const couples: readonly Sheet[] = [
  sheet(
    'Q1 as taught',
    'Q1',
    { names: two },
    `
    moments about A: RC*20 ft - 30 kip ft = 0 ; RC = 1.5 kip
    forces up: RA + RC = 0 ; RA = -1.5 kip
    moment at 10 ft: RA*10 ft + 30 kip ft ; M = 15 kip ft`,
  ),
  sheet(
    'Q1 directions',
    'Q1',
    { names: two },
    `
    moments about C: -RA*20 ft - 30 kip ft = 0 ; RA = 1.5 kip down
    moments about C: RA = -360 kip in / 20 ft = -1.50 kip
    moments about B: -RA*8 ft - 30 kip ft + RC*12 ft = 0 ; RC = 1.50 kip up`,
  ),
  sheet(
    'Q1 turned',
    'Q1',
    { names: two },
    `
    moments about A: RC*20 ft + 30 kip ft = 0 ; RC = -1.5 kip => wrong sign
    forces up: RA + RC = 0 ; RA = 1.5 kip => follows`,
  ),
  sheet(
    'Q1 left out, or twice',
    'Q1',
    { names: two },
    `
    moments about A: RC*20 ft = 0 ; RC = 0 kip => wrong missing-term
    forces up: RA + RC - 30 kip = 0 => wrong extra-term`,
  ),
  sheet(
    'Q1 times an arm',
    'Q1',
    { names: two },
    `
    moments about A: RC*20 ft - 30 kip*8 ft = 0 ; RC = 12 kip => wrong`,
  ),
  sheet(
    'Q1 size',
    'Q1',
    { names: two },
    `
    moments about A: RC*20 ft - 35 kip ft = 0 ; RC = 1.75 kip => wrong magnitude`,
  ),
];

const hinged =
  '{ RA: reaction A up, MA: reaction A counterclockwise, RC: reaction C up, VH: shear at H }';

const hinges: readonly Sheet[] = [
  sheet(
    'G1 part by part',
    'G1',
    { names: hinged },
    `
    moments about H on H to C: RC*5 m - 10 kN*3 m = 0 ; RC = 6 kN
    forces up on H to C: VH + RC - 10 kN = 0 ; VH = 4 kN
    forces up on A to H: RA - VH = 0 ; RA = 4 kN
    moments about A on A to H: MA - VH*4 m = 0 ; MA = 16 kN m`,
  ),
  sheet(
    'G1 the whole',
    'G1',
    { names: hinged },
    `
    moments about H on A to H: MA - RA*4 m = 0
    moments about H on H to C: RC*5 m = 10 kN*3 m ; RC = 6 kN
    forces up: RA + RC = 10 kN ; RA = 4 kN
    moments about A: MA + RC*9 m - 10 kN*7 m = 0 ; MA = 16 kN m
    moment at H: RC*5 m - 10 kN*3 m ; M = 0`,
  ),
  sheet(
    'G1 slips',
    'G1',
    { names: hinged },
    `
    moments about H on H to C: RC*5 m - 10 kN*7 m = 0 ; RC = 14 kN => wrong lever-arm
    forces up on A to H: RA + VH = 0 ; RA = -4 kN => wrong sign
    moments about A on A to H: MA = 0 => wrong missing-term`,
  ),
  sheet(
    'G1 a force of the other part',
    'G1',
    { names: hinged },
    `
    forces up on A to H: RA - VH + RC = 0 => wrong extra-term
    moments about H on H to C: RC*5 m - 10 kN*3 m = 0 ; RC = 6.5 kN => wrong arithmetic`,
  ),
];

const inclined: readonly Sheet[] = [
  sheet(
    'N1 by ratios',
    'N1',
    { names: '{ HA: reaction A right, RA: reaction A up, RC: reaction C up }' },
    `
    forces right: HA + 10 kN*3/5 = 0 ; HA = 6 kN left
    moments about A: RC*5 m - 10 kN*4/5*2 m = 0 ; RC = 3.2 kN
    forces up: RA + RC - 8 kN = 0 ; RA = 4.8 kN`,
  ),
  sheet(
    'N1 by the angle',
    'N1',
    { names: '{ HA: reaction A right, RA: reaction A up, RC: reaction C up }' },
    `
    forces right: HA + 10 kN*cos(53.13 deg) = 0 ; HA = -6.00 kN
    moments about A: 5 m*RC = 10 kN*sin(53.13)*2 m ; RC = 3.20 kN
    forces left: -HA - 6 kN ; HA = -6 kN`,
  ),
  sheet(
    'N1 slips',
    'N1',
    { names: '{ HA: reaction A right, RA: reaction A up, RC: reaction C up }' },
    `
    forces right: HA - 10 kN*3/5 = 0 ; HA = 6 kN => wrong sign
    forces right: HA + 10 kN*4/5 = 0 ; HA = -8 kN => wrong magnitude
    moments about A: RC*5 m - 10 kN*2 m = 0 ; RC = 4 kN => wrong magnitude
    forces right: HA = 0 => wrong missing-term`,
  ),
];

const overhangs: readonly Sheet[] = [
  sheet(
    'O1 as taught',
    'O1',
    { names: ends },
    `
    moments about A: RB*10 ft - 9 kip*4 ft - 3 kip*15 ft = 0 ; RB = 8.10 kip
    moments about B: -RA*10 ft + 9 kip*6 ft - 3 kip*5 ft = 0 ; RA = 3.90 kip
    forces up: RA + RB - 12 kip = 0
    moment at B: -3 kip*5 ft ; M = 15 kip ft hogging
    shear left of B: RA - 9 kip ; V = -5.1 kip
    maximum moment: 3.9 kip*4 ft ; M = 15.6 kip ft`,
  ),
  sheet(
    'O1 lumped',
    'O1',
    { names: ends },
    `
    moments about A: RB = (36 kip ft + 45 kip ft)/10 ft = 8.1 kip
    moments about A: RB = 81 kip ft/10 ft ; RB = 8.1 kip
    moments about B: RA = (9 kip*6 ft - 3 kip*5 ft)/10 ft = 3.9 kip`,
  ),
  sheet(
    'O1 overhang turned',
    'O1',
    { names: ends },
    `
    moments about B: -RA*10 ft + 9 kip*6 ft + 3 kip*5 ft = 0 ; RA = 6.9 kip => wrong sign
    moments about A: RB*10 ft - 9 kip*4 ft + 3 kip*15 ft = 0 ; RB = -0.9 kip => wrong sign`,
  ),
  sheet(
    'O1 overhang left out',
    'O1',
    { names: ends },
    `
    moments about A: RB*10 ft - 9 kip*4 ft = 0 ; RB = 3.6 kip => wrong missing-term
    forces up: RA + RB - 9 kip = 0 => wrong missing-term`,
  ),
  sheet(
    'O1 arms',
    'O1',
    { names: ends },
    `
    moments about A: RB*10 ft - 9 kip*4 ft - 3 kip*5 ft = 0 ; RB = 5.1 kip => wrong lever-arm
    moments about B: RA*10 ft - 9 kip*4 ft + 3 kip*5 ft = 0 ; RA = 2.1 kip => wrong lever-arm`,
  ),
  sheet(
    'O1 two slips in a line',
    'O1',
    { names: ends },
    `
    moments about A: RB*10 ft + 9 kip*4 ft - 3 kip*5 ft = 0 ; RB = -2.1 kip => wrong sign lever-arm`,
  ),
  sheet(
    'O1 rounding',
    'O1',
    { names: ends },
    `
    moments about A: RB*10 ft = 81 kip ft ; RB = 8 kip => right rounding
    moments about B: RA*10 ft = 39 kip ft ; RA = 3.9 kip`,
  ),
];

const continuous: readonly Sheet[] = [
  sheet(
    'C1 true statements',
    'C1',
    { names: '{ RA: reaction A up, RB: reaction B up, RC: reaction C up }' },
    `
    forces up: RA + RB + RC = 48 kN
    moments about A: RB*6 m + RC*12 m - 48 kN*6 m = 0
    note: RA = RC by symmetry
    reaction B up: 10/8 * 4 kN/m * 6 m ; 30 kN
    moment at B: -4 kN/m*(6 m)^2/8 ; M = 18 kN m`,
  ),
  sheet(
    'C1 from statics alone',
    'C1',
    { names: '{ RA: reaction A up, RB: reaction B up, RC: reaction C up }' },
    `
    forces up: RA + RB + RC - 48 kN = 0 ; RB = 16 kN => wrong solvability
    moments about A: RB*6 m + RC*12 m - 48 kN*6 m = 0 ; RC = 16 kN => follows`,
  ),
  sheet(
    'C1 slips',
    'C1',
    { names: '{ RA: reaction A up, RB: reaction B up, RC: reaction C up }' },
    `
    moments about A: RB*6 m + RC*12 m + 48 kN*6 m = 0 => wrong sign
    forces up: RA + RB - 48 kN = 0 => wrong missing-term`,
  ),
];

const twoCases: readonly Sheet[] = [
  sheet(
    'X1 the load told by the work',
    'X1',
    { names: two },
    `
    moments about A: RC*21 ft - 8.4 kip*6 ft = 0 ; RC = 2.4 kip
    forces up: RA + RC = 8.4 kip ; RA = 6 kip`,
  ),
  sheet(
    'X1 all',
    'X1',
    { loads: 'all', names: two },
    `
    moments about A: RC*21 ft - 8.4 kip*6 ft - 5.25 kip*10.5 ft = 0 ; RC = 5.025 kip
    forces up: RA + RC - 8.4 kip - 0.25 kip/ft*21 ft = 0 ; RA = 8.625 kip`,
  ),
  sheet(
    'X1 superposed',
    'X1',
    { names: two },
    `
    moments about A for L: RC*21 ft - 8.4 kip*6 ft = 0 ; RC = 2.4 kip
    moments about A for D: RC*21 ft - 5.25 kip*10.5 ft = 0 ; RC = 2.625 kip
    reaction C up for all: 2.4 kip + 2.625 kip ; 5.025 kip`,
  ),
  sheet(
    'X1 of all, one forgotten',
    'X1',
    { loads: 'all', names: two },
    `
    moments about A: RC*21 ft - 8.4 kip*6 ft = 0 ; RC = 2.4 kip => wrong missing-term
    forces up for Z: RA + RC = 0 => unread step`,
  ),
];

/** Every sheet on the other members. */
export const otherSheets: readonly Sheet[] = [
  ...uniform,
  ...varying,
  ...cantilevers,
  ...couples,
  ...hinges,
  ...inclined,
  ...overhangs,
  ...continuous,
  ...twoCases,
];
