import type { WorkedText } from '../../project/index.ts';
import { termsOfLine } from '../matching/worker-terms.ts';
import { isSame } from '../matching/closeness.ts';
import { linearForm } from '../reading/linear-form.ts';
import { readLine } from '../reading/read-line.ts';
import type { WrittenLine } from '../reading/written.ts';
import type { Finding, Verdict } from '../verdict.ts';
import { chainFindings } from './chain-findings.ts';
import { markConclusions, type Conclusions } from './mark-conclusions.ts';
import { markEquation, type MarkedEquation } from './mark-equation.ts';
import { displayOf } from './shown-as.ts';
import { truthOf } from './truth-of.ts';
import { meaningsFor, ownMeaningsFor, symbolsOf } from './meanings.ts';
import { words } from './phrases.ts';
import { readPart, readSumClaim } from './read-claim.ts';
import { capital } from './speech.ts';
import { ownEquation, solveFor, type OwnEquation } from './solve-for.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';
import { markUnfitTerms } from './unfit-terms.ts';

/** Marks a step that claims an equilibrium sum. */
export function markSum(
  request: StepRequest,
  sum: WorkedText,
  pending: OwnEquation[],
): StepMark {
  const { context, worker, step } = request;
  const claim = readSumClaim(context, sum.text);
  if (typeof claim === 'string') return unread('step', `${capital(claim)}.`);
  const parts = readPart(context, step.part?.text);
  if (typeof parts === 'string') return unread('step', `${capital(parts)}.`);
  if (step.write === undefined)
    return unread('step', 'Nothing is written for this sum.');
  const read = request.read(step.write.text, symbolsOf(worker, request.also.keys()));
  if (read.fault !== undefined)
    return unread(read.fault.kind, faultWords(step.write.text, read.fault));
  const meanings = meaningsFor(context, worker, request.also);
  const sense = claim.sense ?? worker.signs.moments;
  const candidate = { claim, parts, sense };
  const marked = markEquation(request, read.readings, [candidate], meanings);
  if ('verdict' in marked)
    return markUnfitTerms(request, read.readings, candidate, meanings) ?? marked;
  const { reading } = marked.explained;
  const own = ownMeaningsFor(context, worker, request.also);
  const { terms = marked.explained.terms } = termsOfLine(reading, own);
  pending.push(ownEquation(terms));
  const chain = chainFindings(
    reading,
    own,
    (key) =>
      worker.concluded.get(key)?.value ??
      solveFor(key, pending, known(request)) ??
      truthOf(request, key),
    (si, like) =>
      words(
        context,
        displayOf({ dimension: dimensionOf(reading, meanings) }),
        si + 0 * like,
      ),
  );
  const texts = step.so.length > 0 ? step.so.map(({ text }) => text) : implied(reading);
  const concluded = markConclusions(request, texts, {
    equations: pending,
    isLineRight: marked.isRight,
    takesMagnitude: false,
  });
  return together(marked, chain, withSolvability(request, concluded, texts));
}

function known({ worker }: StepRequest): ReadonlyMap<string, number> {
  return new Map([...worker.concluded].map(([key, { value }]) => [key, value]));
}

function dimensionOf(
  { links }: WrittenLine,
  meanings: ReturnType<typeof meaningsFor>,
): {
  readonly force: number;
  readonly length: number;
  readonly temperature: number;
  readonly angle: number;
} {
  const last = links.at(-1);
  const form = last === undefined ? undefined : linearForm(last, meanings).form;
  return form?.dimension ?? { force: 1, length: 0, temperature: 0, angle: 0 };
}

/** `R = … = 2.40 kip` concludes by itself. */
function implied({ links, text }: WrittenLine): readonly string[] {
  const [first] = links;
  const last = links.at(-1);
  const isConclusion =
    links.length > 1 &&
    first?.kind === 'name' &&
    last?.kind === 'number' &&
    !last.isBare;
  return isConclusion ? [`${first.name} = ${text.slice(last.start)}`] : [];
}

/** An indeterminate member gives no single reaction from its sums alone. */
function withSolvability(
  { context }: StepRequest,
  concluded: Conclusions,
  texts: readonly string[],
): Conclusions {
  const isDrawn = texts.length > 0 && !concluded.isDetermined;
  if (context.redundants === 0 || !isDrawn || concluded.standing === 'right')
    return concluded;
  return {
    ...concluded,
    standing: 'wrong',
    findings: [
      {
        kind: 'solvability',
        message: `The member has ${context.redundants} more unknown${context.redundants === 1 ? '' : 's'} than equilibrium has equations: its sums alone do not give this value.`,
      },
    ],
  };
}

/** What `together` asks of a line: right or not, and what was found. */
export type JudgedLine = Pick<MarkedEquation, 'isRight' | 'findings' | 'expected'> &
  Partial<Pick<MarkedEquation, 'isFollowing'>>;

/** A step is as good as its line, its chain and its conclusions together. */
export function together(
  marked: JudgedLine,
  chain: readonly Finding[],
  concluded: Conclusions,
): StepMark {
  const isWrong = !marked.isRight || chain.length > 0 || concluded.standing === 'wrong';
  // What rests on a wrong value follows from it, whether or not anything is concluded.
  const isFollowing = marked.isFollowing === true && concluded.standing === 'right';
  const standing = isFollowing ? 'follows' : concluded.standing;
  const verdict: Verdict =
    standing === 'unread' ? 'unread' : isWrong ? 'wrong' : standing;
  return {
    verdict,
    findings: [
      ...marked.findings,
      ...chain,
      ...concluded.findings.filter((finding) => !isSaid(finding, chain)),
    ],
    remarks: concluded.remarks,
    ...(marked.expected === undefined ? {} : { expected: marked.expected }),
  };
}

/** True where the chain of a step holds the number that a conclusion repeats, and said what is wrong with it. */
function isSaid({ term }: Finding, chain: readonly Finding[]): boolean {
  const number = numberAtEnd(term);
  return (
    number !== undefined &&
    chain.some((one) => {
      const said = numberAtEnd(one.term);
      return said !== undefined && isSame(said, number);
    })
  );
}

/** The number in which a line ends, SI; undefined where it ends in something else. */
function numberAtEnd(text: string | undefined): number | undefined {
  const last = readLine(text ?? '', []).readings?.[0]?.links.at(-1);
  return last?.kind === 'number' ? Math.abs(last.quantity.si) : undefined;
}
