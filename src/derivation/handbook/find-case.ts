import { bendingRedundants, type BeamStructure } from '../../statics/index.ts';
import { caseViews, type CaseView } from './case-view.ts';
import type { Given, HandbookCase } from './handbook-case.ts';
import { handbookCases } from './handbook-cases.ts';

/** A handbook case that a beam shows, the way to look at it, and its letters' values. */
export interface HandbookFit {
  readonly of: HandbookCase;
  readonly view: CaseView;
  readonly given: Given;
  /** The one E I of the beam, N·m²; absent where it is not known or varies. */
  readonly EI?: number;
}

/**
 * The handbook case that one load case of a beam is, seen from either end and with its loads turned round if need
 * be; undefined where none fits. The forces of an indeterminate beam follow the tables only with one E I all along.
 */
export function findHandbookCase(
  structure: BeamStructure,
  mark: string,
): HandbookFit | undefined {
  const EI = constantStiffness(structure);
  if (EI === 'varies' && bendingRedundants(structure) > 0) return undefined;
  const views = caseViews(structure, mark);
  for (const of of handbookCases) {
    for (const view of views) {
      const given = view.scheme === of.scheme ? of.fits(view) : undefined;
      if (given !== undefined)
        return { of, view, given, ...(typeof EI === 'number' ? { EI } : {}) };
    }
  }
  return undefined;
}

function constantStiffness({
  stiffness,
}: BeamStructure): number | 'varies' | 'unknown' {
  const [first, ...rest] = stiffness ?? [];
  if (first === undefined) return 'unknown';
  return rest.every(({ EI }) => Math.abs(EI - first.EI) <= 1e-12 * first.EI)
    ? first.EI
    : 'varies';
}
