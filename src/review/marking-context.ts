import type { BeamWork } from '../derivation/index.ts';
import type { BeamDefinition, Conventions, Project } from '../project/index.ts';
import {
  superpose,
  tidyStructure,
  type BeamResult,
  type BeamStructure,
  type CaseFactor,
} from '../statics/index.ts';

import { reactionKey } from './reaction-key.ts';

/** What steps are marked against: a member under one case, all cases together, or a combination. */
export interface MarkingContext {
  readonly definition: BeamDefinition;
  /** Tidy: stations that mean one place are one number. */
  readonly structure: BeamStructure;
  /** Mark of the case or combination, or `all`. */
  readonly mark: string;
  readonly loading: readonly CaseFactor[];
  readonly result: BeamResult;
  /** The true value of a reaction by its key; undefined for any other unknown. */
  readonly truths: (key: string) => number | undefined;
  /** Forces that statics alone cannot tell. */
  readonly redundants: number;
  readonly system: 'us' | 'si';
  /** Figures to which a conclusion must be right. */
  readonly figures: number;
  readonly conventions: Conventions;
}

/** The cases that load this member; every case where none does. */
export function casesOf({ structure }: BeamWork): readonly string[] {
  const settled = structure.supports.flatMap(({ restraints }) =>
    restraints.flatMap(({ settlements = [] }) => settlements.map((one) => one.case)),
  );
  const loaded = new Set([...structure.loads.map((load) => load.case), ...settled]);
  const own = structure.cases.filter((mark) => loaded.has(mark));
  return own.length === 0 ? structure.cases : own;
}

/** The readings of what work may be for: every case that loads the member, every combination, and all cases together. */
export function loadingsOf(work: BeamWork): readonly string[] {
  const marks = [...casesOf(work), ...work.combinations.map(({ mark }) => mark)];
  return marks.includes('all') ? marks : [...marks, 'all'];
}

/** The context of a solved member under a case, a combination or `all`; undefined for any other mark. */
export function markingContext(
  project: Project,
  work: BeamWork,
  mark: string,
): MarkingContext | undefined {
  const found = loadingOf(work, mark);
  if (found === undefined) return undefined;
  return {
    definition: work.definition,
    structure: tidyStructure(work.structure),
    mark,
    ...found,
    truths: reactionTruths(work.structure, found.result),
    redundants: work.solution.determinacy.redundants,
    system: project.definition.units,
    // A hand calculation is not asked for more than three figures.
    figures: Math.min(project.definition.figures.value, 3),
    conventions: project.definition.conventions,
  };
}

function reactionTruths(
  structure: BeamStructure,
  { reactions }: BeamResult,
): MarkingContext['truths'] {
  const values = new Map(
    structure.supports.flatMap(({ point, restraints }, at) =>
      restraints.map(
        (_, index) =>
          [reactionKey(point, index), reactions[at]?.components[index] ?? 0] as const,
      ),
    ),
  );
  return (key) => values.get(key);
}

function loadingOf(
  work: BeamWork,
  mark: string,
): Pick<MarkingContext, 'loading' | 'result'> | undefined {
  const { solution, combinations, combined } = work;
  const own = solution.results.find((result) => result.mark === mark);
  if (own !== undefined) return { loading: [{ case: mark, factor: 1 }], result: own };
  const index = combinations.findIndex((combination) => combination.mark === mark);
  const result = combined[index];
  const factors = combinations[index]?.factors;
  if (result !== undefined && factors !== undefined)
    return { loading: factors, result };
  if (mark !== 'all') return undefined;
  const all = work.structure.cases.map((one) => ({ case: one, factor: 1 }));
  return { loading: all, result: superpose(solution.results, all, 'all') };
}

/** A named point or a station of the member's axis, as people write it; undefined for neither. */
export function stationOf(
  { structure }: Pick<MarkingContext, 'structure'>,
  written: string,
  readLength: (text: string) => number | undefined,
): number | undefined {
  const text = written.trim();
  const point = structure.points.find(({ name }) => name === text);
  return point?.x ?? readLength(text);
}

/** The name of a place: the point's, else its station as text. */
export function placeName(
  { structure }: Pick<MarkingContext, 'structure'>,
  x: number,
  lengthText: (si: number) => string,
): string {
  const length = (structure.points.at(-1)?.x ?? 0) - (structure.points[0]?.x ?? 0);
  const point = structure.points.find((one) => Math.abs(one.x - x) <= 1e-9 * length);
  return point?.name ?? lengthText(x);
}
