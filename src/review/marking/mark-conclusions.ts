import { nameDimension, sameButAngle } from '../../units/index.ts';
import { isClose } from '../matching/closeness.ts';
import type { Finding } from '../verdict.ts';
import type { NameMeaning } from '../names/name-meanings.ts';
import { readConclusion, type WrittenConclusion } from './conclude.ts';
import { judgeValue, senseOfWord, type Judged } from './judge-value.ts';
import { displayOf, showAs, truthOf } from './mark-equation.ts';
import { ownMeaningsFor, symbolsOf, withValues } from './meanings.ts';
import { solveFor, type OwnEquation } from './solve-for.ts';
import { faultWords, type StepRequest } from './step-mark.ts';
import { impliedMeaning, type OwnValue } from './worker.ts';

/** What the conclusions of a step come to together. */
export interface Conclusions {
  readonly standing: 'right' | 'follows' | 'wrong' | 'unread';
  readonly findings: readonly Finding[];
  readonly remarks: readonly string[];
  /** False where an unknown was concluded that the worker's equations do not give. */
  readonly isDetermined: boolean;
}

/** What conclusions are drawn from. */
export interface Drawn {
  /** The worker's equations so far, this step's last. */
  readonly equations: readonly OwnEquation[];
  /** True where the last of them holds for the member: its rounded figures are as good as unrounded ones. */
  readonly isLineRight: boolean;
  /** The unknown that a value without a symbol is for. */
  readonly target?: NameMeaning;
  /** What the line of a definition comes to. */
  readonly comesTo?: OwnValue;
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
  let standing: Conclusions['standing'] = 'right';
  let isDetermined = true;
  for (const text of texts) {
    const read = readOwnConclusion(request, text);
    if (read.fault !== undefined) {
      findings.push({
        kind: read.fault.kind,
        term: text,
        message: faultWords(text, read.fault),
      });
      standing = 'unread';
      continue;
    }
    const marked = markOne(request, read.conclusion, drawn);
    const chain = betweenFindings(request, read.conclusion);
    findings.push(...chain, ...marked.findings);
    remarks.push(...marked.remarks);
    standing = worse(standing, chain.length > 0 ? 'wrong' : marked.standing);
    isDetermined &&= marked.isDetermined;
  }
  return { standing, findings, remarks, isDetermined };
}

/** A conclusion by the worker's own figures so far. */
function readOwnConclusion(
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

/** What stands between the symbol of a conclusion and its value must come to the value, link by link. */
function betweenFindings(
  request: StepRequest,
  { between, value, dimension }: WrittenConclusion,
): readonly Finding[] {
  return between.flatMap((link, index): readonly Finding[] => {
    const next = between[index + 1] ?? { text: undefined, value, dimension };
    const { dimension: own } = link;
    if (own === undefined || next.dimension === undefined) return [];
    if (!sameButAngle(own, next.dimension))
      return [
        {
          kind: 'unit',
          term: link.text,
          message: 'This does not measure what stands after it.',
        },
      ];
    if (isClose(next.value, link.value)) return [];
    const show = showAs(request, displayOf({ dimension: own }));
    return [
      {
        kind: 'arithmetic',
        term: link.text,
        message: `This comes to ${show(link.value)}, not ${show(next.value)}.`,
      },
    ];
  });
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

function markOne(
  request: StepRequest,
  conclusion: WrittenConclusion,
  drawn: Drawn,
): Conclusions {
  const targets = conclusion.symbols.length === 0 ? [undefined] : conclusion.symbols;
  const findings: Finding[] = [];
  const remarks: string[] = [];
  let standing: Conclusions['standing'] = 'right';
  let isDetermined = true;
  for (const symbol of targets) {
    const meaning =
      symbol === undefined ? drawn.target : meaningOf(request, symbol.name, drawn);
    if (meaning === undefined) {
      const defined = definedOtherwise(request, conclusion, drawn);
      findings.push(...defined.findings);
      standing = worse(standing, defined.standing);
      remember(request, symbol?.name, conclusion, drawn);
      continue;
    }
    const judged = judgeOne(request, conclusion, {
      meaning,
      sign: symbol?.sign ?? 1,
      drawn: { ...drawn, equations: withEqual(request, conclusion, drawn) },
    });
    nameIt(request, symbol?.name, conclusion, meaning);
    findings.push(
      ...judged.findings.map((finding) => ({ ...finding, term: conclusion.text })),
    );
    if (judged.isMagnitude) remarks.push(magnitudeRemark(meaning));
    standing = worse(standing, judged.standing);
    isDetermined &&= judged.isDetermined;
  }
  return { standing, findings, remarks, isDetermined };
}

/** The worse of two standings. */
function worse(
  one: Conclusions['standing'],
  other: Conclusions['standing'],
): Conclusions['standing'] {
  const order = ['unread', 'wrong', 'follows', 'right'] as const;
  return order.find((standing) => standing === one || standing === other) ?? one;
}

/**
 * `RA = RC = 9 kip` says by itself that the two are one, which goes with the equations where it is
 * true of the member: by symmetry.
 */
function withEqual(
  request: StepRequest,
  { symbols }: WrittenConclusion,
  drawn: Drawn,
): readonly OwnEquation[] {
  const unknowns = symbols.flatMap(({ name, sign }) => {
    const meaning = meaningOf(request, name, drawn);
    if (meaning?.kind !== 'unknown') return [];
    const { key, share, truth } = meaning;
    return [{ key, share: sign * share, truth: sign * truth }];
  });
  const [first, ...others] = unknowns;
  const last = drawn.equations.at(-1);
  if (first === undefined || last === undefined) return drawn.equations;
  const equal = others
    .filter(({ truth }) => isClose(truth, first.truth))
    .map(({ key, share }): OwnEquation => ({
      constant: 0,
      shares: new Map([
        [first.key, first.share],
        [key, -share],
      ]),
    }));
  // The step's own equation stays the last one.
  return [...drawn.equations.slice(0, -1), ...equal, last];
}

function meaningOf(
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
function nameIt(
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

/** What is said of a symbol of the worker's own beside what its line comes to. */
function definedOtherwise(
  request: StepRequest,
  conclusion: WrittenConclusion,
  { comesTo }: Pick<Drawn, 'comesTo'>,
): Pick<Judged, 'standing' | 'findings'> {
  if (comesTo === undefined) return { standing: 'right', findings: [] };
  const { own, truth, dimension } = comesTo;
  const unfit = unfitUnit(conclusion, { dimension });
  if (unfit !== undefined)
    return { standing: 'wrong', findings: [{ ...unfit, term: conclusion.text }] };
  const { standing, findings } = judgeValue(
    conclusion.value,
    {
      truth,
      own,
      unit: conclusion.unit,
      takesMagnitude: false,
      figures: request.context.figures,
    },
    showAs(request, displayOf(comesTo)),
  );
  return {
    standing,
    findings: findings.map((finding) => ({ ...finding, term: conclusion.text })),
  };
}

/** A symbol of the worker's own: its value is what was concluded. */
function remember(
  { worker }: StepRequest,
  name: string | undefined,
  { value, dimension }: WrittenConclusion,
  { comesTo }: Pick<Drawn, 'comesTo'>,
): void {
  if (name !== undefined && dimension !== undefined)
    worker.values.set(name, { own: value, truth: comesTo?.truth ?? value, dimension });
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
): Judged & Pick<Conclusions, 'isDetermined'> {
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
  if (meaning.kind === 'known') {
    const { comesTo } = drawn;
    keepKnown(request, conclusion, meaning);
    const known = judgeValue(
      value,
      {
        truth: meaning.truth,
        ...(comesTo === undefined ? {} : { own: comesTo.own }),
        unit: conclusion.unit,
        figures: context.figures,
        takesMagnitude: true,
      },
      show,
    );
    return { ...known, isDetermined: true };
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

/** A declared length or load that the worker came to a value of: later lines are judged by it. */
function keepKnown(
  { worker }: StepRequest,
  { symbols, value }: WrittenConclusion,
  { truth, dimension }: NameMeaning,
): void {
  for (const { name } of symbols)
    worker.values.set(name, { own: value, truth, dimension });
}

/** A conclusion in a unit that its symbol is not measured in, or in none. */
function unfitUnit(
  { value, dimension, isBare }: WrittenConclusion,
  meaning: Pick<NameMeaning, 'dimension'>,
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
