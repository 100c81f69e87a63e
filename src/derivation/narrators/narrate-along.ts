import {
  actsAlongBeam,
  keyOfUnknown,
  unknownsOf,
  valueOfUnknown,
  wholeOf,
  type Unknown,
} from '../../statics/index.ts';
import { hingeUnknowns, type CaseContext } from '../case-context.ts';
import type { EquationStep } from '../steps.ts';
import { narrateAxial } from './narrate-axial.ts';
import { narrateSum } from './narrate-sum.ts';

/**
 * The forces along an indeterminate beam once those across are found: one restraint along it from the
 * sum of forces, several from that sum and their shares by a bar of uniform stiffness.
 */
export function narrateAlong(context: CaseContext): readonly EquationStep[] {
  const { structure, result } = context;
  const finds = unknownsOf(structure).filter((unknown) => isAlong(context, unknown));
  const [only] = finds;
  const keys = new Set(finds.map(keyOfUnknown));
  const known = new Map(
    [...unknownsOf(structure), ...hingeUnknowns(structure)]
      .filter((unknown) => !keys.has(keyOfUnknown(unknown)))
      .map((unknown) => [keyOfUnknown(unknown), valueOfUnknown(result, unknown)]),
  );
  if (only === undefined) return [];
  const of = {
    part: wholeOf(structure),
    sum: { kind: 'forces', along: 'x' },
    clears: [],
    uses: [],
  } as const;
  return finds.length === 1
    ? [narrateSum(context, { kind: 'single', ...of, finds: only }, known)]
    : [narrateAxial(context, { kind: 'axial-sharing', ...of, finds }, known)];
}

function isAlong({ structure }: CaseContext, unknown: Unknown): boolean {
  if (unknown.kind === 'hinge') return false;
  const restraint = structure.supports.find(({ point }) => point === unknown.point)
    ?.restraints[unknown.index];
  return restraint !== undefined && actsAlongBeam(restraint);
}
