import {
  cancelUnits,
  name,
  product,
  quotient,
  sum,
  type Statement,
  type StatementLine,
} from '../../equation/index.ts';
import { valueOfUnknown, type SolvingStep, type Unknown } from '../../statics/index.ts';
import { loadsOfCase, type CaseContext, type KnownValues } from '../case-context.ts';
import { entriesOf } from '../entries.ts';
import { tidy, value } from '../printing.ts';
import type { EquationStep } from '../steps.ts';
import { bareZero, foundOf, titleOf } from './narrate-sum.ts';
import { sumStatement } from './solve-for.ts';

/**
 * Forces along the beam held at several supports: their sum from equilibrium, their shares from a
 * bar of uniform EA. With two supports and one force between them the shares are worked as
 * opposite distances over the distance between; otherwise they are stated and closed by the sum.
 */
export function narrateAxial(
  context: CaseContext,
  step: Extract<SolvingStep, { kind: 'axial-sharing' }>,
  known: KnownValues,
): EquationStep {
  const values = new Map(known);
  const entries = entriesOf(context, step.part, step.sum, values);
  const lines = [
    ...sumStatement(titleOf(context, step.sum), entries, bareZero).lines,
    ...step.finds.map((unknown) => shareLine(context, step.finds, unknown)),
  ];
  const hasLoads = loadsOfCase(context.structure, context.mark).some(
    (load) =>
      (load.kind === 'point' && load.fx !== 0) ||
      (load.kind === 'distributed' && (load.x1 !== 0 || load.x2 !== 0)),
  );
  const statement: Statement = { lines };
  return {
    kind: 'axial-shared',
    restraints: step.finds.map((unknown) => context.symbols.unknown(unknown)),
    hasLoads,
    statement,
    found: step.finds.map((unknown) => foundOf(context, unknown)),
  };
}

function shareLine(
  context: CaseContext,
  all: readonly Unknown[],
  unknown: Unknown,
): StatementLine {
  const { printing, structure, result } = context;
  const left = name(context.symbols.unknown(unknown));
  const found = value(printing, 'force', valueOfUnknown(result, unknown));
  const boxed: StatementLine = { left, chain: [{ sign: '=', of: found }], boxed: true };
  const forces = loadsOfCase(structure, context.mark).flatMap((load) =>
    load.kind === 'point' && load.fx !== 0 ? [load] : [],
  );
  const [only] = forces;
  const stations = all.map(
    (u) => structure.supports.find(({ point }) => point === u.point)?.x ?? 0,
  );
  const here = structure.supports.find(({ point }) => point === unknown.point)?.x ?? 0;
  const other = stations.find((x) => x !== here);
  const isPlain =
    all.length === 2 &&
    forces.length === 1 &&
    only !== undefined &&
    other !== undefined &&
    (only.x - here) * (only.x - other) < 0;
  if (!isPlain) return boxed;
  const size = value(printing, 'force', Math.abs(only.fx));
  const share = quotient(
    product(size, tidy(printing, 'length', Math.abs(other - only.x))),
    tidy(printing, 'length', Math.abs(other - here)),
  );
  const worked = only.fx > 0 ? sum({ sign: -1, of: share }) : share;
  return {
    ...boxed,
    chain: [
      { sign: '=', of: cancelUnits(worked) },
      { sign: '=', of: found },
    ],
  };
}
