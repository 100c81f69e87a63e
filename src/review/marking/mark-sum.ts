import type { WorkedText } from '../../project/index.ts';
import { linearForm } from '../reading/linear-form.ts';
import { readLine } from '../reading/read-line.ts';
import type { WrittenLine } from '../reading/written.ts';
import type { Finding, Verdict } from '../verdict.ts';
import { markConclusions, type Conclusions } from './mark-conclusions.ts';
import {
  chainFindings,
  displayOf,
  markEquation,
  truthOf,
  type MarkedEquation,
} from './mark-equation.ts';
import { meaningsFor, symbolsOf } from './meanings.ts';
import { words } from './phrases.ts';
import { readPart, readSumClaim } from './read-claim.ts';
import { ownEquation, solveFor, type OwnEquation } from './solve-for.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';

/** Marks a step that claims an equilibrium sum. */
export function markSum(
  request: StepRequest,
  sum: WorkedText,
  pending: OwnEquation[],
): StepMark {
  const { context, worker, step } = request;
  const claim = readSumClaim(context, sum.text);
  if (typeof claim === 'string') return unread('step', `${claim}.`);
  const parts = readPart(context, step.part?.text);
  if (typeof parts === 'string') return unread('step', `${parts}.`);
  if (step.write === undefined)
    return unread('step', 'Nothing is written for this sum.');
  const read = readLine(step.write.text, symbolsOf(worker, request.also.keys()));
  if (read.fault !== undefined)
    return unread(read.fault.kind, faultWords(step.write.text, read.fault));
  const meanings = meaningsFor(context, worker, request.also);
  const sense = claim.sense ?? worker.signs.moments;
  const marked = markEquation(
    request,
    read.readings,
    [{ claim, parts, sense }],
    meanings,
  );
  if ('verdict' in marked) return marked;
  pending.push(ownEquation(marked.explained.terms));
  const { reading } = marked.explained;
  const chain = chainFindings(
    reading,
    meanings,
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
    takesMagnitude: false,
  });
  return together(marked, chain, withSolvability(request, concluded, pending, texts));
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
  { context, worker }: StepRequest,
  concluded: Conclusions,
  pending: readonly OwnEquation[],
  texts: readonly string[],
): Conclusions {
  const last = pending.at(-1);
  if (context.redundants === 0 || last === undefined || texts.length === 0)
    return concluded;
  const before = new Set(
    [...worker.concluded].filter(([, one]) => one.isRight).map(([key]) => key),
  );
  const open = [...last.shares.keys()].filter((key) => !before.has(key));
  const isOpen = open.length > 0 && [...last.shares.keys()].length > 1;
  if (!isOpen || concluded.standing === 'right') return concluded;
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

/** A step is as good as its line, its chain and its conclusions together. */
export function together(
  marked: MarkedEquation,
  chain: readonly Finding[],
  concluded: Conclusions,
): StepMark {
  const isWrong = !marked.isRight || chain.length > 0 || concluded.standing === 'wrong';
  const verdict: Verdict =
    concluded.standing === 'unread' ? 'unread' : isWrong ? 'wrong' : concluded.standing;
  return {
    verdict,
    findings: [...marked.findings, ...chain, ...concluded.findings],
    remarks: concluded.remarks,
    ...(marked.expected === undefined ? {} : { expected: marked.expected }),
  };
}
