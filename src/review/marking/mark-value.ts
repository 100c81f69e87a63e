import { dimension, dimensions } from '../../units/index.ts';
import { valueAt, wholeOf, zerosOf } from '../../statics/index.ts';
import type { CutPart, Sum } from '../../statics/index.ts';
import type { WorkedText } from '../../project/index.ts';
import { stationOf } from '../marking-context.ts';
import type { NameMeaning } from '../names/name-meanings.ts';
import { nameMeaning } from '../names/name-meanings.ts';
import { readLength } from '../names/read-length.ts';
import { readLine } from '../reading/read-line.ts';
import type { Written, WrittenLine } from '../reading/written.ts';
import { markConclusions } from './mark-conclusions.ts';
import {
  chainFindings,
  displayOf,
  markEquation,
  truthOf,
  type Candidate,
} from './mark-equation.ts';
import { meaningsFor, symbolsOf } from './meanings.ts';
import { words } from './phrases.ts';
import { together } from './mark-sum.ts';
import { ownEquation } from './solve-for.ts';
import { faultWords, unread, type StepMark, type StepRequest } from './step-mark.ts';
import { cutMeaning } from './worker.ts';

/** A value as a step claims it: what it is, its truth, and the sums that could give it. */
interface ValueClaim {
  readonly meaning: NameMeaning;
  readonly candidates: readonly Candidate[];
  readonly takesMagnitude: boolean;
}

/** The symbol that stands for the value of a step; no worker can write it. */
const valueSymbol = '\u0000value';

/** Marks a step that works a value: an internal force, a reaction, a deflection, a station, a resultant. */
export function markValue(request: StepRequest, value: WorkedText): StepMark {
  const claim = readValueClaim(request, value.text.trim().replace(/\s+/gu, ' '));
  if (typeof claim === 'string') return unread('step', `${claim}.`);
  const { context, worker, step } = request;
  const own: StepRequest = {
    ...request,
    also: new Map([...request.also, [valueSymbol, claim.meaning]]),
  };
  const texts = step.so.map(({ text }) => text);
  const drawn = { target: claim.meaning, takesMagnitude: claim.takesMagnitude };
  if (step.write === undefined) {
    if (texts.length === 0) return unread('step', 'Nothing is written for this value.');
    const concluded = markConclusions(own, texts, { ...drawn, equations: [] });
    return { ...concluded, verdict: concluded.standing };
  }
  const read = readLine(step.write.text, symbolsOf(worker, own.also.keys()));
  if (read.fault !== undefined)
    return unread(read.fault.kind, faultWords(step.write.text, read.fault));
  const lines = read.readings.flatMap((line) => asEquations(line, own));
  const meanings = meaningsFor(context, worker, own.also);
  const marked = markEquation(own, lines, claim.candidates, meanings);
  if ('verdict' in marked) return marked;
  const what = displayOf(claim.meaning);
  const chain = chainFindings(
    withoutSymbol(marked.explained.reading),
    meanings,
    (key) => worker.concluded.get(key)?.value ?? truthOf(own, key),
    (si) => words(context, what, si),
  );
  const said = texts.length > 0 ? texts : lastNumber(read.readings[0]);
  const concluded = markConclusions(own, said, {
    ...drawn,
    equations: [ownEquation(marked.explained.terms)],
  });
  return together(marked, chain, concluded);
}

/** `RA * a = 36 kip ft` concludes by itself. */
function lastNumber(line: WrittenLine | undefined): readonly string[] {
  const last = line?.links.at(-1);
  const isConclusion =
    line !== undefined &&
    line.links.length > 1 &&
    last?.kind === 'number' &&
    !last.isBare;
  return isConclusion ? [line.text.slice(last.start)] : [];
}

/** `RA * a`, `M = RA * a` and `M = RA * a = 36 kip ft` as the expression less the value, in both senses where a size will do. */
function asEquations(line: WrittenLine, request: StepRequest): readonly WrittenLine[] {
  const [first, second, ...others] = line.links;
  if (first === undefined) return [];
  const isNamed =
    second !== undefined && first.kind === 'name' && isOwnSymbol(first.name, request);
  const links = isNamed ? [second, ...others] : line.links;
  const [expression, ...more] = links;
  if (expression === undefined) return [];
  const extent = { start: 0, end: 0 };
  const name: Written = { kind: 'name', name: valueSymbol, ...extent };
  const opposite: Written = { kind: 'sum', terms: [{ sign: -1, of: name }], ...extent };
  return [name, opposite].map((value) => ({
    ...line,
    links: [expression, value, ...more],
  }));
}

function isOwnSymbol(name: string, { worker, context }: StepRequest): boolean {
  const declared = worker.names.get(name);
  if (declared === undefined) return meaningsFor(context, worker)(name) === undefined;
  return typeof declared !== 'string' && declared.kind === 'unknown';
}

function withoutSymbol(line: WrittenLine): WrittenLine {
  const [expression, , ...more] = line.links;
  return expression === undefined
    ? line
    : { ...line, links: [expression, expression, ...more] };
}

function readValueClaim(request: StepRequest, text: string): ValueClaim | string {
  for (const read of [cutForce, extreme, zeroShear, deflection, named]) {
    const found = read(request, text);
    if (found !== undefined) return found;
  }
  return `\`${text}\` is no value that can be marked: write moment, shear or axial at a station, maximum moment, deflection at a station, station of zero shear, reaction B up or resultant of D`;
}

type ClaimReader = (
  request: StepRequest,
  text: string,
) => ValueClaim | string | undefined;

const cutForce: ClaimReader = ({ context }, text) => {
  const found = /^(moment|shear|axial)(?: force)? (?:at|(left|right) of) (.+)$/u.exec(
    text,
  );
  if (found === null) return undefined;
  const [, force = 'moment', side, place = ''] = found;
  const x = stationOf(context, place, readLength);
  if (x === undefined) return `there is no place ${place} on this member`;
  const sides =
    side === undefined ? (['left', 'right'] as const) : [side as 'left' | 'right'];
  // Where no side is said, an end of the member means the side that the member is on.
  const isStart = x <= (context.structure.points[0]?.x ?? 0);
  const first = side === undefined && isStart ? 'right' : sides[0];
  const of = force as 'moment' | 'shear' | 'axial';
  return {
    meaning: cutMeaning(context, of, { x, side: first }),
    candidates: sides.flatMap((one) => cutCandidates(context, of, { x, side: one })),
    takesMagnitude: true,
  };
};

/** The sums of the part on the left and of the part on the right of a cut. */
function cutCandidates(
  { structure }: StepRequest['context'],
  force: 'moment' | 'shear' | 'axial',
  cut: { readonly x: number; readonly side: 'left' | 'right' },
): readonly Candidate[] {
  const sum: Sum =
    force === 'moment'
      ? { kind: 'moments', about: cut.x }
      : { kind: 'forces', along: force === 'shear' ? 'y' : 'x' };
  const about = structure.points.find(({ x }) => x === cut.x)?.name ?? 'the cut';
  const claim = { sum, ...(force === 'moment' ? { about } : {}) };
  const { from, to } = wholeOf(structure);
  const parts: readonly CutPart[] = [
    ...(cut.x > from || cut.side === 'right' ? [{ to: cut }] : []),
    ...(cut.x < to || cut.side === 'left' ? [{ from: cut }] : []),
  ];
  // Signs at a cut: what turns clockwise on the left part bends it to sag.
  return parts.map((part) => ({
    claim,
    parts: [part],
    sense: part.to === undefined ? 1 : -1,
  }));
}

const extreme: ClaimReader = ({ context }, text) => {
  const found = /^(maximum|greatest|minimum|least) (moment|shear)$/u.exec(text);
  if (found === null) return undefined;
  const [, word = '', what = 'moment'] = found;
  const { max, min } = context.result.extremes[what as 'moment' | 'shear'];
  const isLeast = word === 'minimum' || word === 'least';
  const best = isLeast ? min : Math.abs(min.value) > max.value + 1e-12 ? min : max;
  const force = what as 'moment' | 'shear';
  const of = force === 'moment' ? dimension({ force: 1, length: 1 }) : dimensions.force;
  const key = `extreme ${word} ${what}`;
  return {
    meaning: { kind: 'unknown', key, dimension: of, share: 1, truth: best.value },
    candidates: (['left', 'right'] as const).flatMap((side) =>
      cutCandidates(context, force, { x: best.x, side }),
    ),
    takesMagnitude: true,
  };
};

const zeroShear: ClaimReader = ({ context }, text) => {
  if (!/^(?:station|place|point) of zero shear$/u.test(text)) return undefined;
  const stations = zerosOf(context.result.shear).map((zero) =>
    'x' in zero ? zero.x : zero.from,
  );
  const [first] = stations;
  if (first === undefined) return 'the shear of this member is nowhere 0';
  return known(dimensions.length, first);
};

const deflection: ClaimReader = ({ context }, text) => {
  const found = /^(?:deflection at (.+)|maximum deflection)$/u.exec(text);
  if (found === null) return undefined;
  const { displacement } = context.result;
  if (displacement === undefined)
    return 'this member has no E or I, so its deflection is not known';
  const [, place] = found;
  if (place === undefined) {
    const { max, min } = displacement.extremes;
    return known(
      dimensions.length,
      Math.abs(min.value) > max.value ? min.value : max.value,
    );
  }
  const x = stationOf(context, place, readLength);
  if (x === undefined) return `there is no place ${place} on this member`;
  return known(dimensions.length, valueAt(displacement.deflection, x, 'left'));
};

const named: ClaimReader = ({ context }, text) => {
  const read = nameMeaning(context, text);
  if (read.meaning === undefined) return undefined;
  const { meaning } = read;
  if (meaning.kind === 'known') return known(meaning.dimension, meaning.si);
  const { structure } = context;
  const about = [...structure.supports, ...structure.points].map(({ x }) => x);
  return {
    meaning,
    candidates: [
      ...about.map((x): Candidate => ({
        claim: {
          sum: { kind: 'moments', about: x },
          about: structure.points.find((point) => point.x === x)?.name ?? 'the point',
        },
        parts: [{}],
        sense: 1,
      })),
      {
        claim: { sum: { kind: 'forces', along: 'y' }, sense: 1 },
        parts: [{}],
        sense: 1,
      },
      {
        claim: { sum: { kind: 'forces', along: 'x' }, sense: 1 },
        parts: [{}],
        sense: 1,
      },
    ],
    takesMagnitude: false,
  };
};

/** A value that no sum of forces gives: judged as a number alone. */
function known(of: NameMeaning['dimension'], truth: number): ValueClaim {
  return {
    meaning: { kind: 'unknown', key: 'value', dimension: of, share: 1, truth },
    candidates: [
      { claim: { sum: { kind: 'forces', along: 'y' } }, parts: [], sense: 1 },
    ],
    takesMagnitude: true,
  };
}
