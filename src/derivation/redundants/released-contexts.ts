import type { Symbol } from '../../equation/index.ts';
import {
  solvingOrder,
  unitMark,
  unitStructure,
  type BeamStructure,
  type ForceMethod,
  type Unknown,
} from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { symbolsOf } from '../symbols.ts';

/** The released member under the loads of the case; its reactions wear a 0. */
export function baseContext(context: CaseContext, work: ForceMethod): CaseContext {
  const structure: BeamStructure = {
    ...work.released,
    cases: [context.mark],
    loads: context.structure.loads.filter((load) => load.case === context.mark),
  };
  return {
    ...context,
    structure,
    order: solvingOrder(structure),
    symbols: {
      ...context.symbols,
      unknown: (unknown) => stateSymbol(structure, unknown, 0),
    },
    result: work.base,
  };
}

/** The released member under the redundant of that number, from 0, alone and of size 1. */
export function unitContext(
  context: CaseContext,
  work: ForceMethod,
  index: number,
): CaseContext {
  const release = work.releases[index];
  const result = work.units[index];
  if (release === undefined || result === undefined)
    throw new RangeError('no such redundant');
  const structure = unitStructure(work.released, release);
  return {
    ...context,
    mark: unitMark,
    structure,
    order: solvingOrder(structure),
    symbols: {
      ...context.symbols,
      unknown: (unknown) => stateSymbol(structure, unknown, index + 1),
      load: () => context.symbols.unknown(release.unknown),
      numberOf: () => index + 1,
    },
    result,
    defined: new Map(),
  };
}

/** The symbol of a reaction in one state of the released member: `R_A,0` under the loads, `R_A,1` under the first redundant. */
export function stateSymbol(
  structure: BeamStructure,
  unknown: Unknown,
  state: number,
): Symbol {
  const plain = symbolsOf(structure).unknown(unknown);
  return {
    ...plain,
    subscript: `${plain.subscript ?? ''},${state}`,
    meaning: `${plain.meaning}, of the released member ${state === 0 ? 'under the loads' : `under a unit of redundant ${state}`}`,
  };
}

/** A restraint of the member by its place on the released one; undefined where it is released. */
export function inReleased(
  { releases }: ForceMethod,
  unknown: Extract<Unknown, { kind: 'reaction' }>,
): Extract<Unknown, { kind: 'reaction' }> | undefined {
  const here = releases.filter((one) => one.unknown.point === unknown.point);
  if (here.some((one) => one.unknown.index === unknown.index)) return undefined;
  const before = here.filter((one) => one.unknown.index < unknown.index).length;
  return { ...unknown, index: unknown.index - before };
}
