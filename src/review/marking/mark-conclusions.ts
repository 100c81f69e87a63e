import type { Finding } from '../verdict.ts';
import type { NameMeaning } from '../names/name-meanings.ts';
import { readConclusion, type WrittenConclusion } from './conclude.ts';
import { judgeValue, senseOfWord, type Judged } from './judge-value.ts';
import { displayOf, showAs, truthOf } from './mark-equation.ts';
import { meaningsFor, symbolsOf } from './meanings.ts';
import { solveFor, type OwnEquation } from './solve-for.ts';
import type { StepRequest } from './step-mark.ts';
import { impliedMeaning } from './worker.ts';

/** What the conclusions of a step come to together. */
export interface Conclusions {
  readonly standing: 'right' | 'follows' | 'wrong' | 'unread';
  readonly findings: readonly Finding[];
  readonly remarks: readonly string[];
}

/** What conclusions are drawn from. */
export interface Drawn {
  /** The worker's equations so far, this step's last. */
  readonly equations: readonly OwnEquation[];
  /** The unknown that a value without a symbol is for. */
  readonly target?: NameMeaning;
  /** True where a plain magnitude is as good. */
  readonly takesMagnitude: boolean;
}

/** Judges every conclusion of a step, and remembers what the worker found. */
export function markConclusions(
  request: StepRequest,
  texts: readonly string[],
  drawn: Drawn,
): Conclusions {
  const findings: Finding[] = [];
  const remarks: string[] = [];
  const standings: Conclusions['standing'][] = [];
  for (const text of texts) {
    const also = new Map(request.also);
    const names = symbolsOf(request.worker, also.keys());
    const read = readConclusion(
      text,
      names,
      meaningsFor(request.context, request.worker, also),
    );
    if (read.fault !== undefined) {
      const { kind, message } = read.fault;
      findings.push({ kind, term: text, message: `${message}.` });
      standings.push('unread');
      continue;
    }
    const marked = markOne(request, read.conclusion, drawn);
    findings.push(...marked.findings);
    remarks.push(...marked.remarks);
    standings.push(marked.standing);
  }
  const worst = (['unread', 'wrong', 'follows'] as const).find((one) =>
    standings.includes(one),
  );
  return { standing: worst ?? 'right', findings, remarks };
}

function markOne(
  request: StepRequest,
  conclusion: WrittenConclusion,
  drawn: Drawn,
): Conclusions {
  const targets = conclusion.symbols.length === 0 ? [undefined] : conclusion.symbols;
  const findings: Finding[] = [];
  const remarks: string[] = [];
  let standing: Conclusions['standing'] = 'right';
  for (const symbol of targets) {
    const meaning =
      symbol === undefined ? drawn.target : meaningOf(request, symbol.name, drawn);
    if (meaning === undefined) {
      remember(request, symbol?.name, conclusion);
      continue;
    }
    const judged = judgeOne(request, conclusion, {
      meaning,
      sign: symbol?.sign ?? 1,
      drawn,
    });
    findings.push(
      ...judged.findings.map((finding) => ({ ...finding, term: conclusion.text })),
    );
    if (judged.isMagnitude) remarks.push(magnitudeRemark(meaning));
    if (judged.standing === 'wrong') standing = 'wrong';
    else if (judged.standing === 'follows' && standing === 'right')
      standing = 'follows';
  }
  return { standing, findings, remarks };
}

function meaningOf(
  { context, worker, also }: StepRequest,
  name: string,
  { target }: Drawn,
): NameMeaning | undefined {
  const declared = worker.names.get(name);
  if (declared !== undefined && typeof declared !== 'string') return declared;
  return also.get(name) ?? target ?? impliedMeaning(context, name);
}

/** A symbol of the worker's own: its value is what was concluded. */
function remember(
  { worker }: StepRequest,
  name: string | undefined,
  { value, dimension }: WrittenConclusion,
): void {
  if (name !== undefined && dimension !== undefined)
    worker.values.set(name, { si: value, dimension });
}

interface Judging {
  readonly meaning: NameMeaning;
  readonly sign: 1 | -1;
  readonly drawn: Drawn;
}

function judgeOne(
  request: StepRequest,
  conclusion: WrittenConclusion,
  { meaning, sign, drawn }: Judging,
): Judged {
  const { worker, context, number } = request;
  const worded = wordedValue(conclusion, meaning);
  const value = sign * worded;
  const show = showAs(request, displayOf(meaning));
  if (meaning.kind === 'known')
    return judgeValue(value, standardOf(context.figures, meaning.truth), show);
  const concluded = new Map(
    [...worker.concluded].map(([key, one]) => [key, one.value]),
  );
  const own = solveFor(meaning.key, drawn.equations, concluded);
  const truth = truthOf(request, meaning.key) ?? meaning.truth / meaning.share;
  const judged = judgeValue(
    value,
    {
      truth: truth * meaning.share,
      ...(own === undefined ? {} : { own: own * meaning.share }),
      figures: context.figures,
      takesMagnitude: drawn.takesMagnitude && conclusion.direction === undefined,
    },
    show,
  );
  const signed = judged.isMagnitude ? -value : value;
  worker.concluded.set(meaning.key, {
    step: number,
    value: signed / meaning.share,
    truth,
    isRight: judged.standing === 'right',
  });
  return judged;
}

function standardOf(figures: number, truth: number): Parameters<typeof judgeValue>[1] {
  return { truth, figures, takesMagnitude: true };
}

/**
 * The value in the sense of its symbol: a direction in words says the sense by itself, so that
 * `RA = 6 kN down` of a symbol drawn up is −6 kN.
 */
function wordedValue(
  { value, direction }: WrittenConclusion,
  meaning: NameMeaning,
): number {
  if (direction === undefined) return value;
  const share = meaning.kind === 'unknown' ? Math.sign(meaning.share) || 1 : 1;
  return Math.abs(value) * senseOfWord(direction) * share;
}

function magnitudeRemark({ truth, dimension }: NameMeaning): string {
  const isMoment = dimension.force === 1 && dimension.length === 1;
  if (isMoment)
    return truth < 0
      ? 'given as a size; the sense is hogging: tension on top'
      : 'given as a size; the sense is sagging: tension at the bottom';
  return `given as a size; in the signs of the diagrams it is ${truth < 0 ? 'negative' : 'positive'}`;
}
