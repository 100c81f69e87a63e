import { isClose } from '../matching/closeness.ts';
import type { NameMeaning } from '../names/name-meanings.ts';
import { readConclusion, type WrittenConclusion } from './conclude.ts';
import type { Drawn } from './drawn.ts';
import { truthOf } from './truth-of.ts';
import { ownMeaningsFor, symbolsOf, withValues } from './meanings.ts';
import type { StepRequest } from './step-mark.ts';
import { impliedMeaning } from './worker.ts';
import { unfitUnit, wordedValue } from './worded-value.ts';

/** A conclusion by the worker's own figures so far. */
export function readOwnConclusion(
  request: StepRequest,
  text: string,
): ReturnType<typeof readConclusion> {
  const { context, worker, also } = request;
  const meanings = withValues(
    ownMeaningsFor(context, worker, also),
    (key) => worker.concluded.get(key)?.value,
  );
  return readConclusion(text, symbolsOf(worker, also.keys()), meanings);
}

/** What a symbol that is concluded stands for; undefined for one of the worker's own. */
export function meaningOf(
  { context, worker, also }: StepRequest,
  name: string,
  { target }: Pick<Drawn, 'target'>,
): NameMeaning | undefined {
  const declared = worker.names.get(name);
  if (declared !== undefined && typeof declared !== 'string') return declared;
  return (
    also.get(name) ?? target ?? worker.said.get(name) ?? impliedMeaning(context, name)
  );
}

/** A symbol that nobody declared is declared by the conclusion that gives its value. */
export function nameIt(
  { context, worker, also }: StepRequest,
  name: string | undefined,
  { value }: WrittenConclusion,
  meaning: NameMeaning,
): void {
  if (name === undefined || also.has(name) || worker.names.has(name)) return;
  const { dimension, truth } = meaning;
  const isForce = dimension.force === 1 && meaning.kind === 'unknown';
  if (isForce && impliedMeaning(context, name) === undefined)
    worker.said.set(name, meaning);
  if (!isForce) worker.values.set(name, { own: value, truth, dimension });
}

/** A symbol of the worker's own: its value is what was concluded. */
export function keepOwn(
  { worker }: StepRequest,
  name: string | undefined,
  { value, dimension }: WrittenConclusion,
  { comesTo }: Pick<Drawn, 'comesTo'>,
): void {
  if (name !== undefined && dimension !== undefined)
    worker.values.set(name, { own: value, truth: comesTo?.truth ?? value, dimension });
}

/** A declared length or load that the worker came to a value of: later lines are judged by it. */
export function keepKnown(
  { worker }: StepRequest,
  { symbols, value }: WrittenConclusion,
  { truth, dimension }: NameMeaning,
): void {
  for (const { name } of symbols)
    worker.values.set(name, { own: value, truth, dimension });
}

/**
 * Remembers what a step concludes that was not judged because its line could not be read or worked:
 * steps that go on from it are judged by it.
 */
export function rememberConclusions(request: StepRequest): void {
  for (const { text } of request.step.so) {
    const { conclusion } = readOwnConclusion(request, text);
    if (conclusion === undefined) continue;
    for (const { name, sign } of conclusion.symbols) {
      const meaning = meaningOf(request, name, {});
      if (meaning?.kind !== 'unknown') continue;
      const { number, worker, context } = request;
      const isJudged = worker.concluded.get(meaning.key)?.step === number;
      if (isJudged || unfitUnit(conclusion, meaning) !== undefined) continue;
      const value = (sign * wordedValue(conclusion, meaning)) / meaning.share;
      const truth = truthOf(request, meaning.key) ?? meaning.truth / meaning.share;
      const { dimension } = meaning;
      const isRight = isClose(value, truth, context.figures);
      worker.concluded.set(meaning.key, {
        step: number,
        value,
        truth,
        dimension,
        isRight,
      });
    }
  }
}
