import type { MarkingContext } from '../marking-context.ts';
import type { Slip } from '../matching/slips.ts';
import type { Finding } from '../verdict.ts';
import { atomWords } from './phrases.ts';
import type { SumClaim } from './read-claim.ts';
import type { Conclusion } from './worker.ts';

/** What findings speak of besides the slips. */
export interface Speech {
  readonly context: MarkingContext;
  readonly claim: SumClaim;
  /** 1 where this line counts as the solver does. */
  readonly sense: 1 | -1;
  /** True where the sum is over the whole member, false for a part of it. */
  readonly isWhole: boolean;
  readonly concluded: ReadonlyMap<string, Conclusion>;
}

/** So many things are named one by one. */
const mostNamed = 3;

/** What a slip is about, in words: `the load of 8.4 kip at B`, or several of them. */
export function namesOf({ atoms }: Slip, { context }: Speech): string {
  const names = [...new Set(atoms.map((atom) => atomWords(context, atom)))];
  const more = names.length - mostNamed;
  const shown = more > 0 ? [...names.slice(0, mostNamed), `${more} more`] : names;
  const last = shown.at(-1) ?? 'it';
  return shown.length < 2 ? last : `${shown.slice(0, -1).join(', ')} and ${last}`;
}

/** The point of a sum of moments in words. */
export function aboutWords({ about }: SumClaim): string {
  return about ?? 'this point';
}

/** What a sum is over, in words. */
export function partWords({ isWhole }: Speech): string {
  return isWhole ? 'the member' : 'this part';
}

/** A sentence begins with a capital. */
export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** A finding that serves as well as the one before it. */
export function orElse<One extends Finding>(finding: One): One {
  return { ...finding, message: `Or else: ${finding.message}` };
}
