import type { BeamStructure, Load } from '../../statics/index.ts';
import type {
  BeamDefinition,
  BeamLoad,
  CarriedReaction,
  Project,
} from '../definitions.ts';
import { present } from '../shape/present.ts';
import { idealiseCarriedRange } from './idealise-carried-range.ts';
import {
  idealiseCarried,
  leftBehind,
  type CarriedComponents,
  type LeftBehind,
} from './idealise-carried.ts';
import { idealiseLoad } from './idealise-load.ts';
import { idealisePattern } from './idealise-pattern.ts';
import { idealiseStiffness } from './idealise-stiffness.ts';
import { idealiseSupport } from './idealise-support.ts';
import { idealiseTemperature } from './idealise-temperature.ts';
import { idealiseTrain } from './idealise-train.ts';
import { spansOf } from './spans-of.ts';

/** A load of the structure and what it stands for in the definition. */
export type LoadView =
  | { readonly kind: 'given'; readonly load: Load; readonly from: BeamLoad }
  | { readonly kind: 'carried'; readonly load: Load; readonly from: CarriedReaction };

/** What the solver sees of a member, and how to find the way back to its file. */
export interface Idealised {
  /** With the loads of patterned cases as choices, cut at supports. */
  readonly structure: BeamStructure;
  /** The same with every load whole and in its place, and no choices: what a sheet draws and narrates. */
  readonly asPlaced: BeamStructure;
  /** One a load of the structure as placed, in its order; ids of given loads are those of the definition. */
  readonly loads: readonly LoadView[];
  /** Components of carried reactions that are not carried on and not 0. */
  readonly leftBehind: readonly LeftBehind[];
}

/**
 * Turns a member's definition into a structure: SI numbers, factors applied, carried reactions as
 * loads. Stations stay on the file's axis. `components` holds, case by case, what the supports
 * give that this member carries; the cases are all of the project's, in its order.
 */
export function idealise(
  project: Pick<Project, 'loads'>,
  member: BeamDefinition,
  components: readonly CarriedComponents[] = [],
): Idealised {
  const given = member.loads.flatMap((from): readonly LoadView[] => {
    const load = idealiseLoad(from);
    return load === undefined ? [] : [{ kind: 'given', load, from }];
  });
  const pairs = member.carried.flatMap((from) =>
    components.filter((one) => one.id === from.id).map((of) => ({ from, of })),
  );
  const carried = pairs.flatMap(({ from, of }) =>
    idealiseCarried(from, of).map((load): LoadView => ({
      kind: 'carried',
      load,
      from,
    })),
  );
  const loads = [...given, ...carried].sort((one, other) =>
    byText(one.load.id, other.load.id),
  );
  const asPlaced = placedStructure(project, member, loads);
  const ranged = pairs.filter(({ of }) => of.range !== undefined);
  return {
    structure: withCarriedRanges(withChoices(project, asPlaced), ranged),
    asPlaced,
    loads,
    leftBehind: pairs.flatMap(({ from, of }) => leftBehind(from, of) ?? []),
  };
}

function placedStructure(
  project: Pick<Project, 'loads'>,
  member: BeamDefinition,
  loads: readonly LoadView[],
): BeamStructure {
  const curvatures = member.temperatures.map(idealiseTemperature);
  return present<BeamStructure>({
    kind: 'beam',
    points: member.points.map(({ name, x }) => ({ name, x })),
    supports: member.supports.map((support) => idealiseSupport(support, member.points)),
    hinges: member.hinges.map(({ point, x }) => ({ point, x })),
    loads: loads.map(({ load }) => load),
    cases: project.loads.cases.map((one) => one.mark),
    stiffness: idealiseStiffness(member),
    curvatures: curvatures.length === 0 ? undefined : curvatures,
    trains: member.trains.length === 0 ? undefined : member.trains.map(idealiseTrain),
  });
}

/** Loads of patterned cases leave the loads and become choices, where the beam has more than one span. */
function withChoices(
  project: Pick<Project, 'loads'>,
  structure: BeamStructure,
): BeamStructure {
  const spans = spansOf(structure);
  const choices = project.loads.cases
    .filter(({ pattern }) => pattern)
    .flatMap(({ mark }) => idealisePattern(mark, structure.loads, spans));
  if (choices.length === 0) return structure;
  const patterned = new Set(choices.map((choice) => choice.case));
  return {
    ...structure,
    loads: structure.loads.filter((load) => !patterned.has(load.case)),
    choices,
  };
}

/** A carried reaction that has no single state leaves the loads and becomes choices, patterned or not. */
function withCarriedRanges(
  structure: BeamStructure,
  ranged: readonly { readonly from: CarriedReaction; readonly of: CarriedComponents }[],
): BeamStructure {
  if (ranged.length === 0) return structure;
  const whole = ranged.flatMap(({ from, of }) => idealiseCarried(from, of));
  const ids = new Set(whole.map(({ id }) => id));
  const parts = ranged.map(({ from, of }) => idealiseCarriedRange(from, of));
  const left = (structure.choices ?? []).flatMap((choice) => {
    const options = choice.options.map((option) => ({
      ...option,
      loads: option.loads.filter(({ id }) => !ids.has(id)),
    }));
    return options.every(({ loads }) => loads.length === 0)
      ? []
      : [{ ...choice, options }];
  });
  const loads = structure.loads.filter(({ id }) => !ids.has(id));
  return {
    ...structure,
    loads: [...loads, ...parts.flatMap((part) => part.loads)].sort((one, other) =>
      byText(one.id, other.id),
    ),
    choices: [...left, ...parts.flatMap((part) => part.choices)],
  };
}

const byText = (one: string, other: string): number =>
  one < other ? -1 : one > other ? 1 : 0;
