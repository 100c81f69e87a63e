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
