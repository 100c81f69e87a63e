import type { BeamStructure, Load } from '../../statics/index.ts';
import type {
  BeamDefinition,
  BeamLoad,
  CarriedReaction,
  Project,
} from '../definitions.ts';
import {
  idealiseCarried,
  leftBehind,
  type CarriedComponents,
  type LeftBehind,
} from './idealise-carried.ts';
import { idealiseLoad } from './idealise-load.ts';
import { idealiseSupport } from './idealise-support.ts';

/** A load of the structure and what it stands for in the definition. */
export type LoadView =
  | { readonly kind: 'given'; readonly load: Load; readonly from: BeamLoad }
  | { readonly kind: 'carried'; readonly load: Load; readonly from: CarriedReaction };

/** What the solver sees of a member, and how to find the way back to its file. */
export interface Idealised {
  readonly structure: BeamStructure;
  /** One a load of the structure, in its order; ids of given loads are those of the definition. */
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
  return {
    structure: {
      kind: 'beam',
      points: member.points.map(({ name, x }) => ({ name, x })),
      supports: member.supports.map((support) =>
        idealiseSupport(support, member.points),
      ),
      hinges: member.hinges.map(({ point, x }) => ({ point, x })),
      loads: loads.map(({ load }) => load),
      cases: project.loads.cases.map((one) => one.mark),
    },
    loads,
    leftBehind: pairs.flatMap(({ from, of }) => leftBehind(from, of) ?? []),
  };
}

const byText = (one: string, other: string): number =>
  one < other ? -1 : one > other ? 1 : 0;
