import { sheet, type Sheet } from './sheet.ts';

/** A beam on a pin at A and a roller at C with one load at B, numbers in the units named. */
interface SimpleBeam {
  readonly mark: string;
  readonly load: number;
  readonly a: number;
  readonly length: number;
  readonly force: string;
  readonly unit: string;
}

const names =
  '{ RA: reaction A up, RC: reaction C up, P: load L at B, a: length A to B }';

const beams: readonly SimpleBeam[] = [
  { mark: 'S1', load: 8.4, a: 6, length: 21, force: 'kip', unit: 'ft' },
  { mark: 'S2', load: 12, a: 2, length: 8, force: 'kN', unit: 'm' },
  { mark: 'S3', load: 1250, a: 4, length: 10, force: 'lb', unit: 'ft' },
  { mark: 'S4', load: 41, a: 3, length: 7.7, force: 'kN', unit: 'm' },
];

/** The files of the members, by mark. */
export const simpleMembers: Readonly<Record<string, string>> = Object.fromEntries(
  beams.map(({ mark, load, a, length, force, unit }) => [
    mark,
    `mark: ${mark}\nkind: beam\npoints: { A: 0 ${unit}, B: ${a} ${unit}, C: ${length} ${unit} }\nsupports: { A: pin, C: roller }\nloads: [ { case: L, point: ${load} ${force}, at: B } ]\n`,
  ]),
);

/** Every sheet on the simple beams. */
export const simpleSheets: readonly Sheet[] = beams.flatMap((beam) => [
  ...rightSheets(beam),
  ...slipSheets(beam),
]);

/** A beam's numbers as texts with units. */
function textsOf({ load, a, length, force, unit }: SimpleBeam) {
  const f = (value: number): string => `${Number(value.toPrecision(3))} ${force}`;
  const l = (value: number): string => `${Number(value.toPrecision(6))} ${unit}`;
  const m = (value: number): string =>
    `${Number(value.toPrecision(3))} ${force} ${unit}`;
  const rc = (load * a) / length;
  return { f, l, m, load, rc, ra: load - rc, a, b: length - a, length, force, unit };
}

function rightSheets(beam: SimpleBeam): readonly Sheet[] {
  const { f, l, m, load, rc, ra, a, b, length, force, unit } = textsOf(beam);
  const [P, A, B, L] = [`${load} ${force}`, l(a), l(b), l(length)];
  const right = (title: string, lines: string, head = {}): Sheet =>
    sheet(`${beam.mark}: ${title}`, beam.mark, { names, ...head }, lines);
  const chain = `RC = ${P} * ${A} / ${L} = ${m(load * a)} / ${L} = ${f(rc)}`;
  return [
    right(
      'as taught',
      `moments about A: -${P} * ${A} + RC * ${L} = 0 ; RC = ${f(rc)}
       forces up: RA - ${P} + RC = 0 ; RA = ${f(ra)}
       moment at B: RA * ${A} ; M = ${m(ra * a)}`,
    ),
    right(
      'times minus one, terms turned about',
      `moments about A: ${P}*${A} - ${L}*RC = 0 ; RC = ${f(rc)}
       forces up: -RC - RA + ${P} = 0 ; RA = ${f(ra)}`,
    ),
    right(
      'nothing on the left, or left out',
      `moments about A: 0 = RC*${L} - ${A} * ${P} ; RC = ${f(rc)}
       forces down: P - RA - RC ; RA = ${f(ra)}`,
    ),
    right(
      'both sides in use',
      `moments about A: ${P} * ${A} = RC * ${L} ; RC = ${f(rc)}
       forces up: RA + RC = P ; RA = ${f(ra)}`,
    ),
    right(
      'solved for the reaction',
      `moments about A: RC = ${P} * ${A} / ${L} ; RC = ${f(rc)}
       moments about C: RA = ${P} * ${B} / ${L} ; RA = ${f(ra)}
       forces up: RA + RC = ${f(ra)} + ${f(rc)}`,
    ),
    right(
      'bare ratios',
      `moments about A: RC = ${P} * ${a}/${length} ; RC = ${f(rc)}
       reaction A up: ${P} * ${l(b).split(' ')[0]} / ${length} ; RA = ${f(ra)}`,
    ),
    right(
      'chained equals',
      `moments about A: ${chain}\nforces up: RA = P - RC = ${f(ra)}`,
    ),
    right(
      "the worker's own signs",
      `moments about A: P*a - RC*${L} = 0 ; RC = ${f(rc)}
       moments about C: RA*${L} - P*${B} = 0 ; RA = ${f(ra)}`,
      { signs: '{ moments: clockwise, vertical: down }' },
    ),
    right(
      'brackets and juxtaposition',
      `moments about A: -${P} (${A}) + RC (${L}) = 0 ; RC = ${f(rc)}
       moments about C: ${P} (${L} − ${A}) − RA × ${L} = 0 ; RA = ${f(ra)}`,
    ),
    right(
      'directions in words',
      `moments about A: -P*a + RC*${L} = 0 ; RC = ${f(rc)} up
       forces up: DA + P - RC = 0 ; DA = ${f(ra)} up`,
      { names: names.replace('RA: reaction A up', 'DA: reaction A down') },
    ),
    right(
      'two equations solved together',
      `forces up: RA + RC - P = 0
       moments about B: -RA*${A} + RC*${B} = 0 ; RA = ${f(ra)} ; RC = ${f(rc)}`,
    ),
    right(
      'parts, the load at the cut counted to either',
      `moments about A: RC*${L} - P*a = 0 ; RC = ${f(rc)}
       forces up: RA = P - RC ; RA = ${f(ra)}
       forces up on A to B: RA - V1 = 0 ; V1 = ${f(ra)}
       forces up on A to B: RA - P - V2 = 0 ; V2 = ${f(-rc)}
       moments about B on B to C: RC*${B} - MB = 0 ; MB = ${m(ra * a)}`,
      {
        names: names.replace(
          ' }',
          ', V1: shear left of B, V2: shear right of B, MB: moment at B }',
        ),
      },
    ),
    right(
      'values of the left and of the right part',
      `reaction C up: P*a/${L} ; ${f(rc)}
       moment at B: ${f(ra)} * ${A} ; ${m(ra * a)}
       moment at B: ${f(rc)} * ${B} ; M = ${m(ra * a)} sagging
       shear left of B: ${f(ra)} ; V = ${f(ra)}
       shear right of B: ${f(ra)} - ${P} ; V = ${f(-rc)}
       shear right of B: RC ; V = ${f(rc)}
       maximum moment: RA * a ; M = ${m(ra * a)}`,
    ),
    right(
      'rounded to three figures, then cut off',
      `moments about A: RC*${L} - P*a = 0 ; RC = ${Number(rc.toPrecision(3))} ${force}
       forces up: RA = P - RC ; RA = ${cut(ra)} ${force}
       moment at B: ${cut(ra)} ${force} * ${A} ; M = ${cut(ra * a)} ${force} ${unit}`,
    ),
    right(
      'no symbols declared, and a note',
      `note: statics alone
       moments about A: R_C * ${L} = ${P} * ${A} ; R_C = ${f(rc)}
       forces up: R_A + R_C = ${P} ; R_A = ${f(ra)}`,
      { names: '{ }' },
    ),
    right(
      'a definition first',
      `def: M1 = ${P} * ${A} ; M1 = ${m(load * a)}
       moments about A: RC*${L} - M1 = 0 ; RC = ${f(rc)}
       def: x = ${L} - ${A} = ${B}`,
    ),
    right(
      'units mixed',
      `moments about A: -${P} * ${A} + RC * ${small(length, unit)} = 0 ; RC = ${smallForce(rc, force)}
       forces up: RA + ${smallForce(rc, force)} - ${P} = 0 ; RA = ${f(ra)}`,
    ),
  ];
}

// Cut off after three figures.
function cut(value: number): number {
  const place = 10 ** (Math.floor(Math.log10(value)) - 2);
  return Number((Math.floor(value / place + 1e-9) * place).toPrecision(3));
}

function small(length: number, unit: string): string {
  return unit === 'ft' ? `${length * 12} in` : `${length * 1000} mm`;
}

function smallForce(value: number, unit: string): string {
  const of = (count: number, name: string): string =>
    `${Number(count.toPrecision(4))} ${name}`;
  if (unit === 'kip') return of(value * 1000, 'lb');
  return unit === 'lb' ? of(value / 1000, 'k') : of(value * 1000, 'N');
}

function slipSheets(beam: SimpleBeam): readonly Sheet[] {
  const { f, l, m, load, rc, ra, a, b, length, force, unit } = textsOf(beam);
  const [P, A, B, L] = [`${load} ${force}`, l(a), l(b), l(length)];
  const wrong = (title: string, lines: string, head = {}): Sheet =>
    sheet(`${beam.mark}: ${title}`, beam.mark, { names, ...head }, lines);
  const good = `moments about A: -P*a + RC*${L} = 0 ; RC = ${f(rc)}`;
  return [
    wrong(
      'the load turned',
      `moments about A: ${P}*${A} + RC*${L} = 0 ; RC = ${f(-rc)} => wrong sign
       forces up: RA - P + RC = 0 ; RA = ${f(load + rc)} => follows
       moment at B: RA*a ; M = ${m((load + rc) * a)} => follows`,
    ),
    wrong(
      'the arm from the other end',
      `moments about A: -P*${B} + RC*${L} = 0 ; RC = ${f(ra)} => wrong lever-arm
       forces up: RA + RC = P ; RA = ${f(rc)} => follows`,
    ),
    wrong(
      'the load left out',
      `moments about A: RC*${L} = 0 ; RC = 0 => wrong missing-term
       forces up: RA + RC = 0 ; RA = 0 => wrong missing-term`,
    ),
    wrong(
      'a load that is not there',
      `moments about A: -P*a - ${f(load * 0.37)} * ${l(length * 0.83)} + RC*${L} = 0 => wrong extra-term
       forces up: RA + RC - P - ${f(load * 0.37)} = 0 => wrong extra-term`,
    ),
    wrong(
      'another size of load',
      `moments about A: -${f(load * 0.73)}*${A} + RC*${L} = 0 ; RC = ${f(rc * 0.73)} => wrong magnitude
       forces up: RA + RC - ${f(load * 0.73)} = 0 => wrong magnitude`,
    ),
    wrong(
      'a conversion slipped',
      `moments about A: -${P}*${a * (unit === 'ft' ? 12 : 1000)} ${unit} + RC*${L} = 0 => wrong unit
       forces up: RA + RC - ${load * 1000} ${force} = 0 => wrong unit`,
    ),
    wrong(
      'wrongly worked out',
      `moments about A: -P*a + RC*${L} = 0 ; RC = ${f(rc * 1.17)} => wrong arithmetic
       forces up: RA = P - RC ; RA = ${f(load - rc * 1.17)} => follows
       moments about C: RA = P*${B}/${L} = ${f(ra * 0.9)} => wrong arithmetic`,
    ),
    wrong(
      'the sign of a conclusion',
      `moments about A: -P*a + RC*${L} = 0 ; RC = ${f(-rc)} => wrong sign
       moments about C: P*${B} - RA*${L} = 0 ; RA = ${f(ra)} down => wrong sign`,
    ),
    wrong(
      'a thousand out',
      `moments about A: -P*a + RC*${L} = 0 ; RC = ${f(rc * 1000)} => wrong unit`,
    ),
    wrong(
      'another figure than was found',
      `${good}
       forces up: RA - P + ${f(rc * 1.3)} = 0 ; RA = ${f(load - rc * 1.3)} => wrong carried
       forces up: RA - P + RC = 0 ; RA = ${f(ra)}`,
    ),
    wrong(
      'symbols that nobody knows',
      `moments about A: -Q*${A} + RC*${L} = 0 => unread symbol
       ${good}
       forces up: RA + RC - P = 0 ; RZ = => unread syntax`,
    ),
    wrong(
      'lines that do not parse',
      `moments about A: -P*(a + RC*${L} = 0 => unread syntax
       forces up: RA + + = RC @ P => unread syntax
       ${good}`,
    ),
    wrong(
      'claims that are none',
      `forces sideways: RA + RC = P => unread step
       moments about Z: RA*${L} = 0 => unread step
       beauty of A: 3 ${force} => unread step
       ${good}`,
    ),
    wrong(
      'numbers without units',
      `moments about A: -${load}*${A} + RC*${L} = 0 ; RC = ${f(rc)} => wrong unit
       forces up: RA + RC - ${load} = 0 ; RA = ${f(ra)} => wrong unit
       moments about A: -P*a + RC*${L} = 0 ; RC = ${Number(rc.toPrecision(3))} => wrong unit`,
    ),
    wrong(
      'values of a part',
      `${good}
       forces up: RA = P - RC ; RA = ${f(ra)}
       moment at B: RA*${B} ; M = ${m(ra * b)} => wrong lever-arm
       moment at B: RA*a ; M = ${m(ra * a)} hogging => wrong sign
       shear right of B: RA + P ; V = ${f(ra + load)} => wrong sign
       moment at B: RA*a ; M = ${m(ra * a * 1.2)} => wrong arithmetic`,
    ),
    wrong(
      'the wrong reaction',
      `moments about A: -P*a + RA*${L} = 0 ; RA = ${f(rc)} => wrong
       moments about C: P*${B} - RA*${L} = 0 ; RA = ${f(ra)}`,
    ),
    wrong(
      'the same slip twice',
      `moments about A: P*a + RC*${L} = 0 ; RC = ${f(-rc)} => wrong sign
       moments about A: RC*${L} = -P*a ; RC = ${f(-rc)} => wrong sign`,
    ),
    wrong(
      'a definition gone wrong',
      `def: W = ${P} * 2 ; W = ${f(load * 3)} => wrong arithmetic
       def: x = ${L} - ${A} = ${l(b * 1.5)} => wrong arithmetic
       def: P = ${f(load * 1.4)} => wrong magnitude`,
    ),
  ];
}
