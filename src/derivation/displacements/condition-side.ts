import { exactly, type Expression } from '../../equation/index.ts';
import { pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { bendingFigure } from './bending-units.ts';
import type { ConditionRow, Integration } from './integrate-bending.ts';

/** How often E I v″ is integrated for a condition: once for slopes, twice for deflections. */
export function timesOf({ condition }: ConditionRow): 1 | 2 {
  return condition.what === 'slope' ? 1 : 2;
}

/** The right side of a condition: E I times the support's movement, a bare 0 where it stands still. */
export function sideOf(
  { printing }: CaseContext,
  { bending }: Integration,
  row: ConditionRow,
): Expression {
  const moved = bending.EI * row.condition.movement;
  return moved === 0
    ? exactly(0, pureUnit)
    : bendingFigure(printing, timesOf(row), moved);
}
