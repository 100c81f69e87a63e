import type { Restraint } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import type { Worked } from './bending.ts';
import { reactionsIn, type SupportRestraint } from './restraints.ts';

/**
 * What a support makes of the elastic curve: the deflection or the slope at its station. An inclined one
 * ties the deflection to the slide u of the member along its axis: v + slide · u = movement.
 */
export interface Condition {
  readonly what: 'deflection' | 'slope';
  readonly point: string;
  readonly x: number;
  /** m or rad; 0 where a rigid support stands still. */
  readonly movement: number;
  /** dx/dy of an inclined support, 0 of any other. */
  readonly slide: number;
  readonly restraint: Restraint;
  /** The force or moment of the support, positive along its restraint. */
  readonly force: number;
  /** Movement of the foot in this case, against the restraint's direction. */
  readonly settlement: number;
}

/** The conditions that the supports of a stretch set, from left to right, deflection before slope. */
export function conditionsOf(
  context: CaseContext,
  worked: Worked,
): readonly Condition[] {
  const slide = slideOf(context);
  return reactionsIn(context.structure.supports)
    .filter(({ support: { x } }) => x >= worked.from && x <= worked.to)
    .flatMap((one) => conditionOf(context, one, slide))
    .sort((a, b) => a.x - b.x || (a.what < b.what ? -1 : 1));
}

/**
 * How far the member slides along its axis (axial strain is neglected): as its supports along it let it, 0
 * where none does; undefined where only inclined supports hold it, so that the slide is one more unknown.
 */
export function slideOf(context: CaseContext): number | undefined {
  const all = reactionsIn(context.structure.supports);
  const along = all.find(
    ({ restraint: r }) =>
      r.kind === 'force' && r.direction[1] === 0 && r.direction[0] !== 0,
  );
  if (along?.restraint.kind === 'force')
    return movementOf(context, along) * along.restraint.direction[0];
  const isTied = all.some(
    ({ restraint: r }) =>
      r.kind === 'force' && r.direction[0] !== 0 && r.direction[1] !== 0,
  );
  return isTied ? undefined : 0;
}

function conditionOf(
  context: CaseContext,
  one: SupportRestraint,
  slide: number | undefined,
): readonly Condition[] {
  const { support, restraint } = one;
  const common = {
    point: support.point,
    x: support.x,
    restraint,
    force: forceOf(context, one),
    settlement: settlementOf(context, restraint),
  };
  const moved = movementOf(context, one);
  if (restraint.kind === 'moment')
    return [{ ...common, what: 'slope', movement: moved, slide: 0 }];
  const [dx, dy] = restraint.direction;
  if (dy === 0) return [];
  const along = slide ?? 0;
  return [
    {
      ...common,
      what: 'deflection',
      movement: (moved - dx * along) / dy + 0,
      slide: slide === undefined ? dx / dy : 0,
    },
  ];
}

function forceOf(
  { result }: CaseContext,
  { support, index }: SupportRestraint,
): number {
  const reaction = result.reactions.find(({ point }) => point === support.point);
  return reaction?.components[index] ?? 0;
}

/** Movement of a support's foot in a case, against the restraint's direction. */
export function settlementOf(
  { mark }: Pick<CaseContext, 'mark'>,
  { settlements = [] }: Restraint,
): number {
  return settlements
    .filter((one) => one.case === mark)
    .reduce((all, { value }) => all + value, 0);
}

/** How far the member moves along a restraint: its foot's settlement, and what its spring gives way. */
export function movementOf(context: CaseContext, one: SupportRestraint): number {
  const { stiffness } = one.restraint;
  const given = stiffness === undefined ? 0 : forceOf(context, one) / stiffness;
  return 0 - settlementOf(context, one.restraint) - given;
}
