import type { StepRequest } from './step-mark.ts';

/** What an unknown truly is, in its own sense. */
export function truthOf(
  { context, worker, also }: StepRequest,
  key: string,
): number | undefined {
  for (const meaning of [...also.values(), ...worker.names.values()])
    if (
      typeof meaning !== 'string' &&
      meaning.kind === 'unknown' &&
      meaning.key === key
    )
      return meaning.truth / meaning.share;
  return context.truths(key) ?? worker.concluded.get(key)?.truth;
}
