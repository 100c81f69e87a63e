import { actionsOn, type Action } from './actions.ts';
import { factorOf, type Sum } from './equilibrium.ts';
import type { CaseFactor } from './loading.ts';
import { wholeOf, type Part } from './parts.ts';
import type { HingeForce, Reaction, Residual } from './solution.ts';
import type { BeamStructure } from './structure.ts';
import { closureTolerance } from './tolerances.ts';

/** The solved forces that fill in the unknowns of a sum. */
export interface SolvedForces {
  readonly reactions: readonly Reaction[];
  readonly hingeForces: readonly HingeForce[];
}

/**
 * Works equilibrium again from the solved forces: both force sums of the whole beam, moments about
 * every named point, and moments of the part right of each hinge. The solver uses none of the
 * moment sums (its rows are works on movements), and finds the loads' shares by integration,
 * while here they enter as the resultants that a hand calculation takes.
 */
export function residualsOf(
  structure: BeamStructure,
  loading: string | readonly CaseFactor[],
  solved: SolvedForces,
): readonly Residual[] {
  const whole = wholeOf(structure);
  const work = (
    part: Part,
    sums: readonly (readonly [string, Sum])[],
  ): readonly Residual[] => {
    const actions = actionsOn(structure, loading, part).map((action) => ({
      action,
      value: action.magnitude ?? solvedValue(action, solved),
    }));
    return sums.map(([equation, sum]) => workSum(equation, sum, actions));
  };
  const forces = (['x', 'y'] as const).map(
    (along) => [`forces ${along}`, { kind: 'forces', along }] as const,
  );
  const moments = structure.points.map(
    ({ name, x }) => [`moments about ${name}`, { kind: 'moments', about: x }] as const,
  );
  const hinges = structure.hinges.flatMap(({ point, x }) =>
    work({ from: x, to: whole.to }, [
      [`moments about ${point}, right part`, { kind: 'moments', about: x }],
    ]),
  );
  return [...work(whole, [...forces, ...moments]), ...hinges];
}

function workSum(
  equation: string,
  sum: Sum,
  actions: readonly { readonly action: Action; readonly value: number }[],
): Residual {
  let [residual, scale] = [0, 0];
  for (const { action, value } of actions) {
    const term = factorOf(action, sum) * value;
    residual += term;
    scale += Math.abs(term);
  }
  return { equation, residual, scale };
}

function solvedValue({ source }: Action, solved: SolvedForces): number {
  switch (source.kind) {
    case 'reaction':
      return (
        solved.reactions.find(({ point }) => point === source.point)?.components[
          source.index
        ] ?? NaN
      );
    case 'hinge':
      return (
        solved.hingeForces.find(({ point }) => point === source.point)?.[
          source.component
        ] ?? NaN
      );
    case 'load':
      return NaN;
  }
}

/** True where a sum comes to zero as nearly as arithmetic can tell. A sum that is no number is not closed. */
export function isClosed({ residual, scale }: Residual): boolean {
  return Math.abs(residual) <= closureTolerance * scale;
}
