import type { BeamDefinition, BeamLoad, Conventions } from '../project/index.ts';
import {
  keyOfUnknown,
  resultantsOf,
  type BeamResult,
  type BeamStructure,
  type Load,
  type Resultant,
  type RolledCase,
  type SolvingOrder,
  type SumTerm,
  type Unknown,
} from '../statics/index.ts';
import type { ChoiceNames } from './arrangements/choice-names.ts';
import type { Printing } from './printing.ts';
import type { MethodChoice } from './redundants/choose-method.ts';
import type { MemberSymbols } from './symbols.ts';

export { pointAt } from './point-at.ts';

/** What every narrator of one member needs: the definition, the structure, the symbols, how to print. */
export interface MemberContext {
  readonly definition: BeamDefinition;
  readonly structure: BeamStructure;
  /** The order of its hand calculation, the same for every case; without steps where statics alone cannot solve it. */
  readonly order: SolvingOrder;
  /** The hand method for its redundants; absent where statics alone solves the member. */
  readonly method?: MethodChoice;
  /** True where E or I is not known, so that one stiffness all along was taken. */
  readonly assumesConstantStiffness: boolean;
  readonly symbols: MemberSymbols;
  /** The structure as it was solved, with loads that may stand in several ways as choices. */
  readonly arranged: BeamStructure;
  readonly choiceNames: ChoiceNames;
  /** What trains alone give, by the cases that have some. */
  readonly rolled: readonly RolledCase[];
  readonly printing: Printing;
  readonly conventions: Conventions;
  /** The load of the file behind a load of the structure; absent for carried reactions. */
  readonly defined: ReadonlyMap<string, BeamLoad>;
}

/** What the narrators of one case need on top. */
export interface CaseContext extends MemberContext {
  readonly mark: string;
  readonly result: BeamResult;
  /** Letter of a shape among those that a distributed load is cut into on this sheet; none where there is one. */
  readonly shareOf: (id: string, resultant: Resultant) => string;
}

/** The forces through the hinges as unknowns, x and y of each from left to right. */
export function hingeUnknowns(
  structure: BeamStructure,
): readonly Extract<Unknown, { kind: 'hinge' }>[] {
  return structure.hinges.flatMap(({ point }) =>
    (['x', 'y'] as const).map((component) => ({
      kind: 'hinge' as const,
      point,
      component,
    })),
  );
}

/** A load of the structure by its id. */
export function loadOf(structure: BeamStructure, id: string): Load {
  const found = structure.loads.find((load) => load.id === id);
  if (found === undefined) throw new RangeError(`no load ${id}`);
  return found;
}

/** The loads of one case, in the order of the structure. */
export function loadsOfCase(structure: BeamStructure, mark: string): readonly Load[] {
  return structure.loads.filter((load) => load.case === mark);
}

/**
 * Letters for the shapes into which the sums of a sheet cut distributed loads: a load that stays
 * one shape has none, others take a, b, c in the order in which the sums bring them up.
 */
export function nameShares(
  structure: BeamStructure,
  terms: readonly SumTerm[],
): (id: string, resultant: Resultant) => string {
  const seen = new Map<string, string[]>();
  const note = (id: string, resultant: Resultant): void => {
    const keys = seen.get(id) ?? [];
    const key = keyOfShape(resultant);
    if (!keys.includes(key)) seen.set(id, [...keys, key]);
  };
  for (const load of structure.loads) {
    if (load.kind === 'distributed' && terms.length === 0) {
      for (const shape of resultantsOf(load)) note(load.id, shape);
    }
  }
  for (const term of terms) {
    if (term.source.kind === 'load' && term.resultant !== undefined) {
      note(term.source.id, term.resultant);
    }
  }
  return (id, resultant) => {
    const keys = seen.get(id) ?? [];
    if (keys.length <= 1) return '';
    const index = Math.max(0, keys.indexOf(keyOfShape(resultant)));
    return 'abcdefghijklmnopqrstuvwxyz'[index % 26] ?? '';
  };
}

/** One text for one shape, for telling shapes apart. */
export function keyOfShape({ shape, from, to, start, end }: Resultant): string {
  return [shape, ...[from, to, start, end].map((n) => n.toPrecision(9))].join(' ');
}

/** The unknowns found so far, by key, with their values in SI. */
export type KnownValues = ReadonlyMap<string, number>;

/** What is known of an unknown, if anything yet. */
export function knownValue(known: KnownValues, unknown: Unknown): number | undefined {
  return known.get(keyOfUnknown(unknown));
}
