import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { workMembers, type DerivedMember } from '../../src/derivation/index.ts';
import { checkWorked, type MarkedStep } from '../../src/review/index.ts';
import {
  markingContext,
  type MarkingContext,
} from '../../src/review/marking-context.ts';
import { atomsOf, type Atom } from '../../src/review/matching/atoms.ts';
import { readFolder } from '../support/folder.ts';
import { folderOf } from '../support/beam-file.ts';
import { determinateBeam } from '../support/random-beam.ts';
import { readWorked } from '../../src/project/kinds/worked/read-worked.ts';

/** How a line is written: signs turned, terms shuffled, sides, units, which sum. */
const styles = fc.record({
  about: fc.nat(20),
  isForces: fc.boolean(),
  isTurned: fc.boolean(),
  order: fc.infiniteStream(fc.nat(1000)),
  sides: fc.infiniteStream(fc.boolean()),
  tail: fc.constantFrom(' = 0', '', 'left'),
  unit: fc.constantFrom('kN', 'N'),
  pick: fc.nat(100),
});

type Style = typeof styles extends fc.Arbitrary<infer T> ? T : never;

interface Term {
  readonly sign: 1 | -1;
  readonly size: string;
  readonly value: number;
  readonly arm: number | undefined;
  readonly atom: Atom;
}

/** Four figures, plain decimals. */
function four(value: number): string {
  const text = Number(value.toPrecision(4));
  return text.toLocaleString('en', { useGrouping: false, maximumFractionDigits: 12 });
}

function termText({ size, arm }: Term): string {
  return arm === undefined ? size : `${size} * ${four(arm)} m`;
}

/** The text of a line in a style. */
function written(terms: readonly Term[], style: Style): string {
  const order = style.order;
  const shuffled = terms
    .map((term) => ({ term, at: order.next().value as number }))
    .sort((a, b) => a.at - b.at)
    .map(({ term }) => term);
  const left: string[] = [];
  const right: string[] = [];
  for (const term of shuffled) {
    const isRight = style.tail === 'left' && (style.sides.next().value as boolean);
    const sign = term.sign * (style.isTurned ? -1 : 1) * (isRight ? -1 : 1);
    (isRight ? right : left).push(`${sign < 0 ? '-' : '+'} ${termText(term)}`);
  }
  const side = (texts: readonly string[]): string =>
    texts.length === 0 ? '0' : texts.join(' ').replace(/^\+ /u, '');
  return style.tail === 'left'
    ? `${side(left)} = ${side(right)}`
    : `${side(left)}${style.tail}`;
}

/** The direction of a reaction in words. */
function senseOf([dx, dy]: readonly [number, number]): string {
  if (dx !== 0 && dy !== 0) return 'normal';
  if (dy !== 0) return dy > 0 ? 'up' : 'down';
  return dx > 0 ? 'right' : 'left';
}

/** What a random beam is marked with; undefined where it is none that can be worked. */
function workedBeam(structure: Parameters<typeof folderOf>[0]) {
  const { value: project } = readFolder(folderOf(structure));
  const mark = structure.loads[0]?.case;
  const [work] = project === undefined ? [] : workMembers(project, []);
  if (project === undefined || mark === undefined || work?.kind !== 'worked')
    return undefined;
  // Marking reads the worked member alone; telling its derivation would take most of the time.
  const member = { kind: 'derived', work: work.work } as DerivedMember;
  const context = markingContext(project, work.work, mark);
  return context === undefined
    ? undefined
    : { project, members: [member], mark, context };
}

/** A reaction's symbol in words, by the direction of its restraint. */
function meansOf(
  { structure }: MarkingContext,
  what: Extract<Atom['what'], { kind: 'reaction' }>,
): string {
  const support = structure.supports.find((one) => one.point === what.point);
  const restraint = support?.restraints[what.index];
  const sense =
    restraint?.kind === 'force' ? senseOf(restraint.direction) : 'counterclockwise';
  return `reaction ${what.point} ${sense}`;
}

/** An atom as a term: an unknown by its symbol, a load by its size. */
function termOf(atom: Atom, symbol: string, style: Style): Term {
  const isCouple = atom.quantity === 'couple';
  const hasArm = !isCouple && !style.isForces;
  const arm = hasArm ? Math.abs(atom.factor) : undefined;
  const share = isCouple || hasArm ? 1 : Math.abs(atom.factor);
  if (atom.key !== undefined) {
    const size = share === 1 ? symbol : `${symbol} * ${four(share)}`;
    return { sign: atom.factor < 0 ? -1 : 1, size, value: 0, arm, atom };
  }
  const value = Math.abs(atom.size) * share;
  const shown = style.unit === 'kN' ? value / 1000 : value;
  const size = `${four(shown)} ${style.unit}${isCouple ? ' m' : ''}`;
  return { sign: atom.size * atom.factor < 0 ? -1 : 1, size, value, arm, atom };
}

interface Setting {
  readonly terms: readonly Term[];
  readonly mark: (line: string) => MarkedStep;
}

/** A line of a random sum of a random beam, and what marks it. */
function setting(
  structure: Parameters<typeof folderOf>[0],
  style: Style,
): Setting | undefined {
  const beam = workedBeam(structure);
  if (beam === undefined) return undefined;
  const { project, members, mark, context } = beam;
  const { points } = context.structure;
  const point = points[style.about % points.length]!;
  const sum = style.isForces
    ? ({ kind: 'forces', along: 'y' } as const)
    : ({ kind: 'moments', about: point.x } as const);
  const reach = style.isForces ? 1 : points.at(-1)!.x - points[0]!.x;
  const atoms = atomsOf(context, { sum, part: {} }, 'whole').filter(
    ({ factor, size, key }) =>
      Math.abs(factor) > 1e-4 * reach && (key !== undefined || size !== 0),
  );
  if (atoms.length < 2) return undefined;
  const terms = atoms.map((atom, index) => termOf(atom, `F${index}`, style));
  const names = atoms.flatMap(({ what }, index) =>
    what.kind === 'reaction' ? [`F${index}: ${meansOf(context, what)}`] : [],
  );
  const claim = style.isForces ? 'forces up' : `moments about ${point.name}`;
  const markLine = (line: string): MarkedStep => {
    const text = `member: B1\nloads: ${mark}\nnames: { ${names.join(', ')} }\nsteps:\n  - { sum: ${claim}, write: ${JSON.stringify(line)} }\n`;
    const worked = readWorked({ path: 'worked/a.yaml', text, sha256: '' }, 'si');
    const [file] = checkWorked({ ...project, worked: [worked] }, members);
    const step = file?.steps[0];
    if (step === undefined) throw new Error(file?.fault?.message ?? 'no step');
    return step;
  };
  return { terms, mark: markLine };
}

describe('any line of any determinate beam', () => {
  test('is right in every legitimate style', () => {
    let marked = 0;
    fc.assert(
      fc.property(determinateBeam, styles, (structure, style) => {
        const found = setting(structure, style);
        if (found === undefined) return;
        const line = written(found.terms, style);
        const step = found.mark(line);
        marked += 1;
        expect(
          step.verdict,
          `${step.claim} ${line}\n${JSON.stringify(step.findings)}\n${step.expected?.text}`,
        ).toBe('right');
      }),
      { numRuns: 60, endOnFailure: true },
    );
    expect(marked).toBeGreaterThan(30);
  });

  test('with one slip is wrong, and the slip is named', () => {
    const counts = { wrong: 0, named: 0 };
    const unnamed: string[] = [];
    fc.assert(
      fc.property(
        determinateBeam,
        styles,
        fc.constantFrom(
          'sign',
          'lever-arm',
          'missing-term',
          'extra-term',
          'magnitude',
          'unit',
        ),
        (structure, style, slip) => {
          const found = setting(structure, style);
          if (found === undefined) return;
          const slipped = withSlip(found.terms, style, slip);
          if (slipped === undefined) return;
          const line = written(slipped, style);
          const step = found.mark(line);
          expect(step.verdict, `${slip}: ${step.claim} ${line}`).toBe('wrong');
          counts.wrong += 1;
          const kinds = step.findings.map(({ kind }) => kind as string);
          if (
            kinds.includes(slip) ||
            (['magnitude', 'lever-arm'].includes(slip) && kinds.includes('resultant'))
          )
            counts.named += 1;
          else unnamed.push(`${slip} as ${kinds.join(', ')}: ${step.claim} ${line}`);
        },
      ),
      { numRuns: 120, endOnFailure: true },
    );
    console.log(
      `${counts.named} of ${counts.wrong} planted slips named\n${unnamed.slice(0, 12).join('\n')}`,
    );
    expect(counts.wrong).toBeGreaterThan(40);
    expect(counts.named / counts.wrong).toBeGreaterThanOrEqual(0.9);
  });
});

/** The terms with a slip in one of them; undefined where the line has no place for it. */
function withSlip(
  terms: readonly Term[],
  style: Style,
  slip: string,
): readonly Term[] | undefined {
  // A slip in a term beside which it does not show is none.
  const sizes = terms.map(({ value, arm }) => value * (arm ?? 1));
  const greatest = Math.max(...sizes);
  const loads = terms.filter((_, at) => (sizes[at] ?? 0) > 0.02 * greatest);
  if (loads.length === 0 || terms.length < 3) return undefined;
  const chosen = loads[style.pick % loads.length]!;
  const change = (by: (term: Term) => Term): readonly Term[] =>
    terms.map((term) => (term === chosen ? by(term) : term));
  const resized = (term: Term, by: number): Term => {
    const [count = '', ...unit] = term.size.split(' ');
    return { ...term, size: [four(Number(count) * by), ...unit].join(' ') };
  };
  switch (slip) {
    case 'sign':
      return change((term) => ({ ...term, sign: term.sign === 1 ? -1 : 1 }));
    case 'lever-arm':
      return chosen.arm === undefined
        ? undefined
        : change((term) => ({ ...term, arm: (term.arm ?? 1) * 1.37 }));
    case 'missing-term':
      return terms.filter((term) => term !== chosen);
    case 'extra-term':
      return [
        ...terms,
        {
          ...resized(chosen, 0.431),
          ...(chosen.arm === undefined ? {} : { arm: chosen.arm * 0.713 }),
        },
      ];
    case 'magnitude':
      return change((term) => resized(term, 1.23));
    default:
      return change((term) => resized(term, 1000));
  }
}
