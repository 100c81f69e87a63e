import {
  dimension,
  nameDimension,
  sameButAngle,
  type Dimension,
} from '../../units/index.ts';
import { atomsOf } from '../matching/atoms.ts';
import { termsOfLine, type WorkerTerm } from '../matching/worker-terms.ts';
import type { Meanings } from '../reading/linear-form.ts';
import type { WrittenLine } from '../reading/written.ts';
import { expectedLine } from './expected-line.ts';
import { bareNumbers } from './lacking-units.ts';
import type { Candidate } from './mark-equation.ts';
import type { StepMark, StepRequest } from './step-mark.ts';

const force = dimension({ force: 1 });
const couple = dimension({ force: 1, length: 1 });

/**
 * The mark of a sum some terms of which lack an arm or have one too many: wrong, and one sees what
 * was meant. Undefined where a number without a unit may be why, or the terms measure something
 * else altogether.
 */
export function markUnfitTerms(
  { context, worker }: StepRequest,
  readings: readonly WrittenLine[],
  { claim, parts, sense }: Candidate,
  meanings: Meanings,
): StepMark | undefined {
  const [reading] = readings;
  if (reading === undefined || reading.links.some((link) => bareTerms(link)))
    return undefined;
  const { terms = [] } = termsOfLine(reading, meanings);
  const asked = terms.find(({ unknown }) => unknown !== undefined)?.dimension;
  const reference = asked ?? (claim.sum.kind === 'moments' ? couple : force);
  const unfit = terms.filter((term) => !isFit(term, reference));
  const isSeen = unfit.length > 0 && unfit.length < terms.length;
  if (!isSeen || !unfit.every((term) => isArmApart(term, reference))) return undefined;
  const atoms = atomsOf(
    context,
    { sum: claim.sum, part: parts[0] ?? {} },
    { kind: 'whole' },
  );
  return {
    verdict: 'wrong',
    findings: unfit.map((term) => ({
      kind: 'unit',
      term: term.text,
      message: `This measures ${named(term)}, and the terms of this sum ${nameDimension(reference)}: it ${hasMore(term, reference) ? 'has an arm too many' : 'lacks an arm'}.`,
    })),
    remarks: [],
    expected: expectedLine(context, claim, atoms, { worker, sense, slips: [] }),
  };
}

function bareTerms(link: WrittenLine['links'][number]): boolean {
  const own = link.kind === 'sum' ? link.terms.map(({ of }) => of) : [link];
  return own.some((one) => one.kind === 'number' && bareNumbers(one).length > 0);
}

function isFit({ dimension: of }: WorkerTerm, reference: Dimension): boolean {
  return of === undefined || sameButAngle(of, reference);
}

function isArmApart({ dimension: of }: WorkerTerm, reference: Dimension): boolean {
  return of?.force === reference.force && Math.abs(of.length - reference.length) === 1;
}

function hasMore({ dimension: of }: WorkerTerm, { length }: Dimension): boolean {
  return of !== undefined && of.length > length;
}

function named({ dimension: of }: WorkerTerm): string {
  return of === undefined ? 'nothing' : nameDimension(of);
}
