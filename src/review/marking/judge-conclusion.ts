import type { NameMeaning } from '../names/name-meanings.ts';
import type { WrittenConclusion } from './conclude.ts';
import type { Drawn } from './drawn.ts';
import { judgeValue, type Judged } from './judge-value.ts';
import { displayOf, showAs } from './shown-as.ts';
import { truthOf } from './truth-of.ts';
import { keepKnown } from './own-symbols.ts';
import { solveFor } from './solve-for.ts';
import type { StepRequest } from './step-mark.ts';
import { unfitUnit, wordedValue } from './worded-value.ts';

/** The symbol that a conclusion is judged for: what it stands for, the sign in front of it, and what it is drawn from. */
export interface Judging {
  readonly meaning: NameMeaning;
  readonly sign: 1 | -1;
  readonly drawn: Drawn;
}

/** A conclusion with whether the worker's equations give it. */
export type JudgedConclusion = Judged & { readonly isDetermined: boolean };

/** Judges a conclusion for one of its symbols, and remembers it. */
export function judgeConclusion(
  request: StepRequest,
  conclusion: WrittenConclusion,
  { meaning, sign, drawn }: Judging,
): JudgedConclusion {
  const { worker, context, number } = request;
  const unfit = unfitUnit(conclusion, meaning);
  if (unfit !== undefined)
    return {
      standing: 'wrong',
      findings: [unfit],
      isMagnitude: false,
      isDetermined: true,
    };
  const worded = wordedValue(conclusion, meaning);
  const value = sign * worded;
  const show = showAs(request, displayOf(meaning));
  const { unit } = conclusion;
  const { figures } = context;
  const judgeKnown = (of: number, { truth }: NameMeaning): Judged => {
    const own = drawn.comesTo === undefined ? {} : { own: drawn.comesTo.own };
    return judgeValue(of, { truth, ...own, unit, figures, takesMagnitude: true }, show);
  };
  if (meaning.kind === 'known') {
    keepKnown(request, conclusion, meaning);
    return { ...judgeKnown(value, meaning), isDetermined: true };
  }
  const { own, isDetermined } = ownValue(request, meaning.key, drawn);
  const line = drawn.isLineRight ? lineValue(request, meaning.key, drawn) : undefined;
  const truth = truthOf(request, meaning.key) ?? meaning.truth / meaning.share;
  const judged = judgeValue(
    value,
    {
      truth: truth * meaning.share,
      ...(own === undefined ? {} : { own: own * meaning.share }),
      ...(line === undefined ? {} : { line: line * meaning.share }),
      unit,
      figures,
      takesMagnitude: drawn.takesMagnitude && conclusion.direction === undefined,
    },
    show,
  );
  const signed = judged.isMagnitude ? -value : value;
  worker.concluded.set(meaning.key, {
    step: number,
    value: signed / meaning.share,
    truth,
    dimension: meaning.dimension,
    isRight: judged.standing === 'right',
  });
  return { ...judged, isDetermined };
}

/** What follows from the worker's lines; where they do not determine it, the true value is put in for what nobody concluded. */
function ownValue(
  request: StepRequest,
  key: string,
  { equations }: Pick<Drawn, 'equations'>,
): { readonly own: number | undefined; readonly isDetermined: boolean } {
  const concluded = new Map(
    [...request.worker.concluded].map(([one, { value }]) => [one, value]),
  );
  const own = solveFor(key, equations, concluded);
  const last = equations.at(-1);
  if (own !== undefined || last === undefined) return { own, isDetermined: true };
  for (const other of last.shares.keys()) {
    const truth = truthOf(request, other);
    if (!concluded.has(other) && truth !== undefined) concluded.set(other, truth);
  }
  return { own: solveFor(key, [last], concluded), isDetermined: false };
}

/** What the last equation alone gives, with the truth for every other unknown. */
function lineValue(
  request: StepRequest,
  key: string,
  { equations }: Drawn,
): number | undefined {
  const last = equations.at(-1);
  if (last === undefined) return undefined;
  const truths = new Map(
    [...last.shares.keys()].flatMap((other) => {
      const truth = truthOf(request, other);
      return other === key || truth === undefined ? [] : [[other, truth] as const];
    }),
  );
  return solveFor(key, [last], truths);
}
