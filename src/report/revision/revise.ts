import { compare, type Comparison } from '../../comparison/index.ts';
import type { ProjectDefinition } from '../../project/index.ts';
import type { Part } from '../blocks.ts';
import { anchorOf } from '../contexts/package-facts.ts';
import { packageResults } from '../package-results.ts';
import type { RevisionInput } from '../report-input.ts';
import type { WorkedMembers } from '../worked-members.ts';
import { keptCheck } from './kept-check.ts';
import { hasMarks, markBlocks } from './mark-blocks.ts';
import type { Superseded } from './superseded.ts';

/** What a revision changed, as the package is to tell it. */
export function revisionInput(
  later: WorkedMembers,
  { bag, sha256, worked }: Superseded,
  earlierParts: readonly Part[],
): RevisionInput {
  const [before, after] = [worked.project, later.project];
  if (before === undefined || after === undefined)
    throw new RangeError('a project could not be read');
  return {
    bag,
    sha256,
    comparison: compare(
      { project: before, results: packageResults(worked) },
      { project: after, results: packageResults(later) },
    ),
    earlier: before.definition,
    earlierParts,
  };
}

/** A part compared with the same part of the revision before. */
export interface RevisedPart {
  readonly part: Part;
  /** True where a change reaches its sheets, so that their check is open again. */
  readonly isReached: boolean;
}

/** A part with what differs marked, and its checked box as far as the check of its sheets stands. */
export function revisePart(
  part: Part,
  definition: ProjectDefinition,
  revision: RevisionInput,
): RevisedPart {
  const earlier = earlierPart(part.anchor, revision);
  const blocks =
    earlier === undefined
      ? part.blocks.map((block) => ({ ...block, isChanged: true }))
      : markBlocks(earlier.blocks, part.blocks);
  const isReached = hasMarks(blocks) || reaches(revision.comparison, part.anchor);
  const kept = isReached ? undefined : keptCheck(definition, revision);
  return {
    part: {
      ...part,
      blocks,
      foot: kept === undefined ? part.foot : { ...part.foot, checked: kept },
    },
    isReached,
  };
}

/** The part of the same anchor; of a member that was renamed that of its mark then. */
function earlierPart(
  anchor: string,
  { comparison, earlierParts }: RevisionInput,
): Part | undefined {
  const renamed = comparison.inputs.find(
    ({ kind, part, to, member }) =>
      kind === 'renamed' &&
      part === 'members' &&
      to !== undefined &&
      // A point that was renamed stands on a member too, and its new name is not the member's.
      member === to &&
      anchorOf(to) === anchor,
  );
  const then = renamed?.from === undefined ? anchor : anchorOf(renamed.from);
  return earlierParts.find((part) => part.anchor === then);
}

function reaches({ reach }: Comparison, anchor: string): boolean {
  return reach.some(({ member }) => anchorOf(member) === anchor);
}
