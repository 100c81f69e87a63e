import { call, name, product, type Expression } from '../../equation/index.ts';
import type { CaseContext } from '../case-context.ts';
import { acuteAngle } from '../direction.ts';
import { value } from '../printing.ts';
import { valueOfUnknown } from '../../statics/index.ts';
import { termOf, type BendingTerm } from './bending.ts';
import type { SupportRestraint } from './restraints.ts';
import { factorAt, factored } from './stretch-factor.ts';

/** What a support's force across the member, or its moment, adds to E I v″; nothing of a force along it. */
export function reactionTerm(
  context: CaseContext,
  { support: { point, x }, index, restraint }: SupportRestraint,
  EI: number,
): readonly BendingTerm[] {
  const unknown = { kind: 'reaction', point, index } as const;
  const found = valueOfUnknown(context.result, unknown);
  const symbol = name(context.symbols.unknown(unknown));
  const factor = factorAt(context, x, EI);
  // A counterclockwise moment of a support makes the moment right of it less: it hogs.
  if (restraint.kind === 'moment') {
    const numeric = value(context.printing, 'moment', Math.abs(found));
    const of = factored(factor, { symbolic: symbol, numeric, size: found });
    return [termOf({ at: x, order: 0, sense: -1 }, of)];
  }
  const [dx, dy] = restraint.direction;
  if (dy === 0) return [];
  const isSlanted = dx !== 0;
  const sine = call('sin', acuteAngle(context.printing, restraint.direction));
  const part = (of: Expression): Expression => (isSlanted ? product(of, sine) : of);
  const of = factored(factor, {
    symbolic: part(symbol),
    numeric: part(value(context.printing, 'force', Math.abs(found))),
    size: found * Math.abs(dy),
  });
  return [termOf({ at: x, order: 1, sense: dy > 0 ? 1 : -1 }, of)];
}
