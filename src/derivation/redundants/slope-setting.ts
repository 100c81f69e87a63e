import {
  name,
  product,
  sum,
  type Expression,
  type Figure,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type {
  Joint,
  JointUnknown,
  LinearForm,
  SlopeDeflection,
  SpanState,
} from '../../statics/index.ts';
import {
  displayUnit,
  divideUnits,
  multiplyUnits,
  type Unit,
} from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { referenceRigidity } from './rigidity.ts';

/** A case with its slope-deflection worked. */
export interface SlopeSetting {
  readonly context: CaseContext;
  readonly work: SlopeDeflection;
}

/** The joints at the ends of a span. */
export function endsOf(
  { work }: SlopeSetting,
  { joints: [a, b] }: Pick<SpanState, 'joints'>,
): readonly [Joint, Joint] {
  const [left, right] = [work.joints[a], work.joints[b]];
  if (left === undefined || right === undefined) throw new RangeError('no such joint');
  return [left, right];
}

/** `A to B`. */
export function spanName(setting: SlopeSetting, span: SpanState): string {
  const [a, b] = endsOf(setting, span);
  return `${a.point} to ${b.point}`;
}

/** Symbols of one span: `near` is the end spoken of. */
export interface SpanSymbols {
  readonly moment: (end: 0 | 1) => Symbol;
  readonly held: (end: 0 | 1, load?: string) => Symbol;
  readonly stiffness: (end: 0 | 1) => Symbol;
  readonly across: Symbol;
  readonly carried: (end: 0 | 1) => Symbol;
  readonly chord: Symbol;
  readonly turn: (end: 0 | 1) => Symbol;
  readonly flexibility: (which: 'aa' | 'bb' | 'ab') => Symbol;
  readonly force: (end: 0 | 1) => Symbol;
  readonly simpleForce: (end: 0 | 1) => Symbol;
  readonly length: Symbol;
}

/** The symbols of a span, from the names of its ends. */
export function spanSymbols(setting: SlopeSetting, span: SpanState): SpanSymbols {
  const [a, b] = endsOf(setting, span).map(({ point }) => point) as [string, string];
  const isShort = a.length === 1 && b.length === 1;
  const pair = (end: 0 | 1): string => {
    const [near, far] = end === 0 ? [a, b] : [b, a];
    return isShort ? `${near}${far}` : `${near},${far}`;
  };
  const at = (end: 0 | 1): string =>
    `end ${end === 0 ? a : b} of the span ${a} to ${b}`;
  const whole = `the span ${a} to ${b}`;
  return {
    moment: (end) => ({
      letter: 'M',
      subscript: pair(end),
      meaning: `moment on ${at(end)}, counterclockwise`,
    }),
    held: (end, load) => ({
      letter: 'F',
      subscript: load === undefined ? pair(end) : `${pair(end)},${load}`,
      meaning: `moment on ${at(end)} held fast${load === undefined ? '' : load === '0' ? ', the other end held too' : `, by load ${load}`}`,
    }),
    stiffness: (end) => ({
      letter: 'k',
      subscript: pair(end),
      meaning: `moment on ${at(end)} for its turn, as a share of E I`,
    }),
    across: {
      letter: 'c',
      subscript: pair(0),
      meaning: `moment on either end of ${whole} for a turn of the other, as a share of E I`,
    },
    carried: (end) => ({
      letter: 'r',
      subscript: pair(end),
      meaning: `share of a moment at the other end that arrives at ${at(end)}`,
    }),
    chord: {
      letter: 'ψ',
      subscript: pair(0),
      meaning: `turn of the chord of ${whole}`,
    },
    turn: (end) => ({
      letter: 'φ',
      subscript: pair(end),
      meaning: `turn of ${at(end)} under its loads, on simple supports`,
    }),
    flexibility: (which) => ({
      letter: 'f',
      subscript: `${which === 'bb' ? b : a}${which === 'aa' ? a : b}`,
      meaning: `turn of one end of ${whole} on simple supports for a unit moment at an end, times E I`,
    }),
    force: (end) => ({
      letter: 'S',
      subscript: pair(end),
      meaning: `upward force on ${at(end)}`,
    }),
    simpleForce: (end) => ({
      letter: 'S',
      subscript: `${pair(end)},0`,
      meaning: `upward force on ${at(end)} on simple supports`,
    }),
    length: { letter: 'L', subscript: pair(0), meaning: `length of ${whole}` },
  };
}

/** The symbol of an unknown movement: θ of a joint, v of one that moves across, u of the whole beam. */
export function movementSymbolOf(
  { work }: SlopeSetting,
  { kind, joint }: Pick<JointUnknown, 'kind' | 'joint'>,
): Symbol {
  const point = work.joints[joint]?.point ?? '';
  switch (kind) {
    case 'rotation':
      return {
        letter: 'θ',
        subscript: point,
        meaning: `turn of the joint at ${point}, counterclockwise`,
      };
    case 'deflection':
      return { letter: 'v', subscript: point, meaning: `movement of ${point}, upward` };
    case 'slide':
      return {
        letter: 'u',
        meaning: 'movement of the member along its axis, rightward',
      };
  }
}

/** `E I θ_B`. */
export function unknownExpression(
  setting: SlopeSetting,
  unknown: Pick<JointUnknown, 'kind' | 'joint'>,
): Expression {
  return product(
    referenceRigidity(setting.context),
    name(movementSymbolOf(setting, unknown)),
  );
}

/** The unit in which `E I θ` or `E I v` prints. */
export function unknownUnit(
  { context }: SlopeSetting,
  { kind }: Pick<JointUnknown, 'kind'>,
): Unit {
  const { system } = context.printing;
  const rigidity = displayUnit(system, 'rigidity');
  return kind === 'rotation'
    ? rigidity
    : multiplyUnits(rigidity, displayUnit(system, 'length'));
}

/** A form as terms `0.5/m E I θ_B`, its constant last. */
export function formTerms(
  setting: SlopeSetting,
  { factors, constant }: LinearForm,
  unit: Unit,
): readonly Term[] {
  const { work } = setting;
  const figures = setting.context.printing.figures;
  const size = Math.abs(constant);
  return [
    ...factors.flatMap((factor, index): readonly Term[] => {
      const unknown = work.unknowns[index];
      if (factor === 0 || unknown === undefined) return [];
      const of = figureIn(
        figures,
        divideUnits(unit, unknownUnit(setting, unknown)),
        Math.abs(factor),
      );
      return [
        {
          sign: factor < 0 ? -1 : 1,
          of: product(of, unknownExpression(setting, unknown)),
        },
      ];
    }),
    ...(size === 0
      ? []
      : [{ sign: constant < 0 ? -1 : 1, of: figureIn(figures, unit, size) } as const]),
  ];
}

/** The same with the values of the unknowns. */
export function formNumbers(
  setting: SlopeSetting,
  { factors, constant }: LinearForm,
  unit: Unit,
): readonly Term[] {
  const { work, context } = setting;
  const { figures } = context.printing;
  const plain = (of: Unit, si: number): Figure => figureIn(figures, of, si);
  return [
    ...factors.flatMap((factor, index): readonly Term[] => {
      const unknown = work.unknowns[index];
      if (factor === 0 || unknown === undefined || unknown.value === 0) return [];
      const own = unknownUnit(setting, unknown);
      return [
        {
          sign: factor < 0 ? -1 : 1,
          of: product(
            plain(divideUnits(unit, own), Math.abs(factor)),
            plain(own, unknown.value),
          ),
        },
      ];
    }),
    ...(constant === 0
      ? []
      : [
          {
            sign: constant < 0 ? -1 : 1,
            of: plain(unit, Math.abs(constant)),
          } as const,
        ]),
  ];
}

/** A sum of terms, or a 0 in the unit where there are none. */
export function sumOr(zero: Expression, terms: readonly Term[]): Expression {
  return terms.length === 0 ? zero : sum(...terms);
}
