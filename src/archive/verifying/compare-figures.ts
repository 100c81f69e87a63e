import type { Difference } from '../verification.ts';
import { compareValues, tellEnds, type Place, type Tally } from './compare-values.ts';
import { figureScales } from './figure-scales.ts';
import { keyOf, textOf, type Json } from './json.ts';
import { pairItems } from './pair-items.ts';

/** What came of comparing every figure of two results.json. */
export interface FigureComparison {
  readonly differences: readonly Difference[];
  /** How many numbers were compared. */
  readonly figures: number;
  /** The greatest share of its scale by which any of them differs. */
  readonly greatest: number;
  /** What only the computed state has because its format has grown; no differences. */
  readonly remarks: readonly string[];
}

/**
 * Compares every figure of two results.json by meaning: members and entries by mark, reactions by point,
 * checks by name, combination and span; by position only where position is the meaning. Numbers agree
 * within `agreementTolerance` of the greatest of their unit on the member, the residual of a sum within
 * that share of its terms; texts agree exactly. Sheet numbers are no figures and are left out, and so
 * are the words of an error, not its code.
 */
export function compareFigures(archived: Json, computed: Json): FigureComparison {
  const differences: Difference[] = [];
  const remarks = new Set<string>();
  let figures = 0;
  let greatest = 0;
  const tally: Tally = {
    tell: (difference) => differences.push(difference),
    remark: (sentence) => remarks.add(sentence),
    count: (share) => {
      figures += 1;
      greatest = Math.max(greatest, share);
    },
  };
  const whole = { member: '', what: '', key: '', scaleOf: () => 0, tally };
  compareValues(
    { ...whole, what: 'project', key: 'project' },
    keyOf(archived, 'project'),
    keyOf(computed, 'project'),
  );
  const members = [keyOf(archived, 'members'), keyOf(computed, 'members')] as const;
  for (const pair of pairItems('members', ...members))
    compareMembers(whole, pair.archived, pair.computed);
  return { differences, figures, greatest, remarks: [...remarks] };
}

/** A member with results, one with an error, or one of each. */
function compareMembers(
  whole: Place,
  archived: Json | undefined,
  computed: Json | undefined,
): void {
  const member = textOf(archived ?? computed, 'mark') ?? '';
  const place = { ...whole, member, scaleOf: figureScales(archived, computed) };
  const [ours, theirs] = [errorOf(archived), errorOf(computed)];
  if (archived === undefined || computed === undefined)
    tellEnds({ ...place, what: 'the member' }, archived, computed);
  else if (ours !== theirs)
    tellEnds({ ...place, what: 'results' }, ours ?? 'given', theirs ?? 'given');
  else compareValues(place, archived, computed);
}

/** The code of a member's error; undefined where it has results. */
function errorOf(member: Json | undefined): string | undefined {
  const error = keyOf(member, 'error');
  return error === undefined
    ? undefined
    : `error ${textOf(error, 'code') ?? 'without a code'}`;
}
