import { nameDimension, sameButAngle, type Dimension } from '../../units/index.ts';
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
  /** What the line of a definition comes to. */
  readonly comesTo?: { readonly si: number; readonly dimension: Dimension };
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
      findings.push(...definedOtherwise(request, conclusion, drawn));
      if (findings.length > 0) standing = 'wrong';
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
    standing = worse(standing, judged.standing);
  }
  return { standing, findings, remarks };
}

/** The worse of two standings. */
function worse(
  one: Conclusions['standing'],
  other: Conclusions['standing'],
): Conclusions['standing'] {
  const order = ['unread', 'wrong', 'follows', 'right'] as const;
  return order.find((standing) => standing === one || standing === other) ?? one;
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

/** What is said of a symbol of the worker's own beside what its line comes to. */
function definedOtherwise(
  request: StepRequest,
  conclusion: WrittenConclusion,
  { comesTo }: Drawn,
): readonly Finding[] {
  if (comesTo === undefined) return [];
  const unfit = unfitUnit(conclusion, { kind: 'known', truth: 0, ...comesTo });
  if (unfit !== undefined) return [{ ...unfit, term: conclusion.text }];
  const { context } = request;
  const standard = { truth: comesTo.si, unit: conclusion.unit, takesMagnitude: false };
  const show = showAs(request, displayOf(comesTo));
  const judged = judgeValue(
    conclusion.value,
    { ...standard, figures: context.figures },
    show,
  );
  return judged.findings.map((finding) => ({ ...finding, term: conclusion.text }));
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
  const unfit = unfitUnit(conclusion, meaning);
  if (unfit !== undefined)
    return { standing: 'wrong', findings: [unfit], isMagnitude: false };
  const worded = wordedValue(conclusion, meaning);
  const value = sign * worded;
  const show = showAs(request, displayOf(meaning));
  if (meaning.kind === 'known')
    return judgeValue(
      value,
      {
        truth: meaning.truth,
        unit: conclusion.unit,
        figures: context.figures,
        takesMagnitude: true,
      },
      show,
    );
  const own = ownValue(request, meaning.key, drawn);
  const truth = truthOf(request, meaning.key) ?? meaning.truth / meaning.share;
  const judged = judgeValue(
    value,
    {
      truth: truth * meaning.share,
      ...(own === undefined ? {} : { own: own * meaning.share }),
      unit: conclusion.unit,
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

/** What follows from the worker's lines; of what nobody concluded, the true value is put in. */
function ownValue(
  request: StepRequest,
  key: string,
  { equations }: Drawn,
): number | undefined {
  const concluded = new Map(
    [...request.worker.concluded].map(([one, { value }]) => [one, value]),
  );
  const own = solveFor(key, equations, concluded);
  const last = equations.at(-1);
  if (own !== undefined || last === undefined) return own;
  for (const other of last.shares.keys()) {
    const truth = truthOf(request, other);
    if (!concluded.has(other) && truth !== undefined) concluded.set(other, truth);
  }
  return solveFor(key, [last], concluded);
}

/** A conclusion in a unit that its symbol is not measured in, or in none. */
function unfitUnit(
  { value, dimension, isBare }: WrittenConclusion,
  meaning: NameMeaning,
): Finding | undefined {
  if (dimension === undefined || value === 0) return undefined;
  if (sameButAngle(dimension, meaning.dimension)) return undefined;
  return {
    kind: 'unit',
    message: isBare
      ? 'The number lacks its unit.'
      : `This is ${nameDimension(dimension)}; what is worked here is ${nameDimension(meaning.dimension)}.`,
  };
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
