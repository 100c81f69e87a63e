import { sheet, type Head, type Sheet } from './sheet.ts';

/** An overhang on the left, a half-loaded span with a couple, built-in ends, an inclined roller. */
export const secondMembers: Readonly<Record<string, string>> = {
  J1: `mark: J1
kind: beam
points: { A: 0 ft, B: 4 ft, C: 9 ft, D: 15 ft }
supports: { B: pin, D: roller }
loads: [ { case: L, point: 5 kip, at: A }, { case: L, point: 8 kip, at: C } ]
`,
  J2: `mark: J2
kind: beam
points: { A: 0 m, C: 4 m, B: 8 m }
supports: { A: pin, B: roller }
loads: [ { case: D, uniform: 5 kN/m, from: A, to: C }, { case: L, couple: 12 kN m, at: C, turn: counterclockwise } ]
`,
  J3: `mark: J3
kind: beam
points: { A: 0 m, B: 4 m }
supports: { A: fixed, B: roller }
section: { I: 20e6 mm^4 }
material: { E: 200 GPa }
loads: [ { case: D, uniform: 6 kN/m, from: A, to: B } ]
`,
  J4: `mark: J4
kind: beam
points: { A: 0 ft, C: 6 ft, B: 12 ft }
supports: { A: fixed, B: fixed }
section: { I: 200 in^4 }
material: { E: 29000 ksi }
loads: [ { case: L, point: 10 kip, at: C } ]
`,
  J5: `mark: J5
kind: beam
points: { A: 0 ft, C: 5 ft, B: 10 ft }
supports: { A: pin, B: { type: roller, normal: 60 deg } }
loads: [ { case: L, point: 6 kip, at: C } ]
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

const [overhung, half, proppedEnd, builtIn, inclined] = [
  on(
    'J1',
    '{ RB: reaction B up, RD: reaction D up, P1: load L at A, P2: load L at C }',
  ),
  on('J2', '{ RA: reaction A up, RB: reaction B up, V: shear at C, MC: moment at C }'),
  on(
    'J3',
    '{ RA: reaction A up, MA: reaction A counterclockwise, RB: reaction B up, w: intensity D at A, L: length A to B }',
  ),
  on('J4', '{ RA: reaction A up, RB: reaction B up }'),
  on('J5', '{ RA: reaction A up, HA: reaction A right, R: reaction B normal }'),
];

/** A second set of sheets whose marks were decided before the program saw them. */
export const secondSheets: readonly Sheet[] = [
  overhung(
    'an overhang on the left',
    '',
    `moments about B: P1*4 ft - P2*5 ft + RD*11 ft = 0 ; RD = 1.82 kip
     forces up: RB + RD = 13 kips ; RB = 11.2 kip
     moment at B: -P1*4 ft ; M = 20 k-ft hogging
     shear at C: RB - P1 ; V = 6.18 kip
     shear at C: -RD ; V = -1.82 kip
     maximum moment: -5 kip*4 ft ; M = -20 kip ft`,
  ),
  overhung(
    'the overhang turned',
    '',
    `moments about B: -5 kip*4 ft - 8 kip*5 ft + RD*11 ft = 0 ; RD = 5.45 kip => wrong sign
     forces up: RB = 13 kip - RD ; RB = 7.55 kip => follows
     moment at C: RD*6 ft ; M = 32.7 kip ft => follows`,
  ),
  overhung(
    'measured from the end',
    '',
    `moments about B: 5 kip*4 ft - 8 kip*9 ft + RD*11 ft = 0 ; RD = 4.73 kip => wrong lever-arm
     forces up: RB + RD - 13 kip = 0 ; RB = 8.27 kip => follows`,
  ),
  overhung(
    'about the far support',
    '',
    `forces down: 13 kip - RB - RD = 0
     moments about D: 5 kip*15 ft + 8 kip*6 ft = RB*11 ft ; RB = 11.18 kip upwards`,
  ),
  overhung(
    'chains in the conclusions',
    '',
    `moments about B: 20 kip ft - 40 kip ft + 11 ft*RD = 0 ; RD = 20 kip ft / 11 ft = 1.82 kip
     forces up: RB + RD = 13 kip ; RB = 13 kip - 1.82 kip = 11.81 kip => wrong arithmetic`,
  ),
  overhung(
    'pounds and inches',
    '',
    `moments about B: 5000 lb*48 in - 8000 lb*60 in + RD*132 in = 0 ; RD = 1818 lb
     forces up: RB + 1818 lb - 13,000 lb = 0 ; RB = 11,182 lb`,
  ),
  overhung(
    'a right answer from a wrong line',
    '',
    `moments about B: P1*4 ft + P2*5 ft + RD*11 ft = 0 ; RD = 1.82 kip => wrong sign
     forces up: RB = 13 kip - RD ; RB = 11.2 kip`,
  ),
  overhung(
    'the load beyond the support forgotten',
    '',
    `moments about B: 5 kip*4 ft - 8 kip*5 ft + RD*11 ft = 0 ; RD = 1.82 kip
     forces up: RB + RD - 8 kip = 0 ; RB = 6.18 kip => wrong missing-term
     shear right of C: RB - P1 - P2 ; V = -6.82 kip => follows`,
  ),
  overhung(
    'two figures',
    '',
    `moments about B: 5 kip*4 ft - 8 kip*5 ft + RD*11 ft = 0 ; RD = 1.8 kip => right rounding`,
  ),
  half(
    'half loaded',
    'D',
    `def: W = 5 kN/m * 4 m = 20 kN
     moments about A: 8 m * RB = 20 kN * 2 m ; RB = 5 kN
     forces up: RA = 20 kN - 5 kN = 15 kN
     station of zero shear: 15 kN / (5 kN/m) ; x0 = 3 m
     maximum moment: RA * x0 / 2 ; Mmax = 22.5 kN m
     moment at C: RB * 4 m ; MC = 20 kN m`,
  ),
  half(
    'the resultant at the end of its load',
    'D',
    `moments about A: 8 m * RB = 20 kN * 4 m ; RB = 10 kN => wrong resultant|lever-arm
     forces up: RA = 20 kN - RB ; RA = 10 kN => follows
     station of zero shear: RA / (5 kN/m) ; x0 = 2 m => follows
     maximum moment: RA * x0 / 2 ; Mmax = 10 kN m => follows`,
  ),
  half(
    'a couple',
    'L',
    `moments about A: RB*8 m + 12 kN m = 0 ; RB = -1.5 kN
     forces up: RA + RB = 0 ; RA = 1.5 kN
     moment at C: RA*4 m ; M = 6 kN m
     moment at C: RA*4 m - 12 kN m ; M = -6 kN m`,
  ),
  half(
    'the couple as a force among moments',
    'all',
    `moments about A: RB*8 m - 20 kN*2 m + 12 kN = 0 => wrong unit`,
  ),
  half(
    'a load of another size',
    'D',
    `moments about A: RB*8 m - 24 kN*2 m = 0 ; RB = 6 kN => wrong magnitude
     forces up: RA + RB = 20 kN ; RA = 14 kN => follows`,
  ),
  half(
    'no case named',
    '',
    `moments about A: RB*8 m + 12 kN m = 0 ; RB = -1.5 kN
     forces up: RA = -RB = 1.5 kN`,
  ),
  half(
    'two equations',
    'D',
    `forces up: RA + RB = 20 kN
     moments about C: RB*4 m + 20 kN*2 m - RA*4 m = 0 ; RA = 15 kN ; RB = 5 kN`,
  ),
  half(
    'cut at the middle',
    'D',
    `reaction A up: 20 kN * 6/8 ; RA = 15 kN
     forces up on A to C: RA - 20 kN - V = 0 ; V = -5 kN
     moments about A on A to C: MC - V*4 m - 20 kN*2 m = 0 ; MC = 20 kN m`,
  ),
  half(
    'what cannot be read',
    'D',
    `moments about A: RB*8 m = => unread syntax
     shear at Q: 3 kN => unread step
     forces sideways: RA = 3 kN => unread step
     moments about A: 8 * RB = 40 kN m ; RB = 5 kN => wrong unit`,
  ),
  proppedEnd(
    'from the well-known reaction',
    '',
    `reaction B up: 3 * w * L / 8 ; RB = 9 kN
     forces up: RA + RB - w*L = 0 ; RA = 15 kN
     moments about A: MA + RB*4 m - w*L*L/2 = 0 ; MA = 12 kN m
     moment at A: -MA ; M = -12 kN m
     station of zero shear: 15 kN / (6 kN/m) ; x = 2.5 m
     maximum moment: 9 kN * 1.5 m / 2 ; M = 6.75 kN m sagging`,
  ),
  proppedEnd(
    'statics alone',
    '',
    `moments about A: MA + RB*4 m - 24 kN*2 m = 0 ; RB = 12 kN => wrong solvability
     forces up: RA + RB = 24 kN ; RA = 12 kN => follows`,
  ),
  proppedEnd(
    'the coefficients swapped',
    '',
    `reaction B up: 5*w*L/8 ; RB = 15 kN => wrong magnitude
     forces up: RA = w*L - RB ; RA = 9 kN => follows`,
  ),
  proppedEnd(
    'by the deflection at the prop',
    '',
    `def: RB * (4 m)^3 / 3 = w * (4 m)^4 / 8 ; RB = 9 kN
     deflection at B: 0 mm ; d = 0`,
  ),
  proppedEnd(
    'by another deflection at the prop',
    '',
    `def: RB * (4 m)^3 / 3 = w * (4 m)^4 / 6 ; RB = 12 kN => wrong
     forces up: RA + RB = 24 kN ; RA = 12 kN => follows`,
  ),
  builtIn(
    'both ends built in',
    '',
    `moment at A: -10 kip*12 ft/8 ; MA = -15 kip ft
     note: by symmetry
     forces up: RA + RB = 10 kip ; RA = RB = 5 kip
     moment at C: RA*6 ft - 15 kip ft ; MC = 15 kip ft`,
  ),
  builtIn(
    'as if simply supported',
    '',
    `moment at C: 10 kip*12 ft/4 ; M = 30 kip ft => wrong magnitude`,
  ),
  inclined(
    'an inclined roller',
    '',
    `moments about A: R*sin(60 deg)*10 ft - 6 kip*5 ft = 0 ; R = 3.46 kip
     forces right: HA + R*cos 60 = 0 ; HA = -1.73 kip
     forces up: RA + R*sin 60 = 6 kip ; RA = 3 kip`,
  ),
  inclined(
    'taken as an upright one',
    '',
    `moments about A: R*10 ft - 6 kip*5 ft = 0 ; R = 3 kip => wrong magnitude|lever-arm`,
  ),
  inclined(
    'the push the wrong way',
    '',
    `moments about A: R*sin(60)*10 ft - 6 kip*5 ft = 0 ; R = 3.464 kip
     forces right: HA - R*cos(60 deg) = 0 ; HA = 1.73 kip => wrong sign`,
  ),
];
