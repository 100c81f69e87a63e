import type { Project } from '../../project/index.ts';
import {
  extremesOf,
  optionResults,
  solveStates,
  valueAt,
  type Extreme,
} from '../../statics/index.ts';
import type { BeamWork } from '../beam-work.ts';
import { limitEntry } from './limit-entry.ts';
import { limitSize, type LimitSize } from './limit-size.ts';
import { limitSpans, type LimitSpan } from './limit-spans.ts';
import {
  boundsOfOptions,
  boundsOfRange,
  boundsOfState,
  sumOfBounds,
  type DeflectionBounds,
} from './relative-deflection.ts';

/** A limit of deflection judged on one span. */
export interface JudgedLimit {
  /** Its key in the file: a case, a combination, or a sum. */
  readonly entry: string;
  readonly text: string;
  readonly from: 'member' | 'project';
  readonly terms: readonly { readonly case: string; readonly factor: number }[];
  readonly span: LimitSpan;
  readonly size: LimitSize;
  /** The greatest deflection along the span, m, up positive, and its station. */
  readonly greatest: Extreme;
  /** Whether it is the greatest or the least of what may act. */
  readonly sense: 'max' | 'min';
  /** Size of the deflection over the limit, unrounded. */
  readonly ratio: number;
  readonly passes: boolean;
  /** What each case gives there, measured in the same way, m. */
  readonly shares: readonly {
    readonly case: string;
    readonly factor: number;
    readonly si: number;
  }[];
}

/** A limit that is stated and cannot be judged. */
export interface UnjudgedLimit {
  readonly entry: string;
  readonly text: string;
  readonly why: 'no-stiffness' | 'strength' | 'moving-supports';
  /** The span where only one is left out. */
  readonly span?: LimitSpan;
}

/** Every limit of deflection of a member. */
export interface JudgedLimits {
  readonly judged: readonly JudgedLimit[];
  readonly unjudged: readonly UnjudgedLimit[];
}

/** The bounds of every case along a span. */
type CaseBounds = (mark: string, span: LimitSpan) => DeflectionBounds | undefined;

/**
 * Judges the limits that a member states, or else those of the project, on every span and overhang. Up counts
 * like down; which limits a member has to meet is the user's to say.
 */
export function judgeLimits(
  project: Pick<Project, 'definition'>,
  work: BeamWork,
): JudgedLimits {
  const { definition, structure } = work;
  const own = definition.deflectionLimits;
  const limits = own ?? project.definition.deflectionLimits;
  if (limits.length === 0) return { judged: [], unjudged: [] };
  const cantilevers =
    definition.cantilevers ?? project.definition.cantilevers ?? 'doubled';
  const boundsFor = caseBounds(work);
  const spans = limitSpans(structure);
  const judged: JudgedLimit[] = [];
  const unjudged: UnjudgedLimit[] = [];
  for (const { entry, text } of limits) {
    const read = limitEntry(work, entry);
    if (structure.stiffness === undefined || read.kind === 'strength') {
      const why = read.kind === 'strength' ? 'strength' : 'no-stiffness';
      unjudged.push({ entry, text, why });
      continue;
    }
    for (const span of spans) {
      const one = judgeSpan({ span, terms: read.terms, boundsFor });
      if (one === undefined)
        unjudged.push({ entry, text, why: 'moving-supports', span });
      else {
        const size = limitSize(text, span, cantilevers);
        const ratio = Math.abs(one.greatest.value) / size.si;
        const from = own === undefined ? 'project' : 'member';
        judged.push({
          ...one,
          entry,
          text,
          from,
          terms: read.terms,
          span,
          size,
          ratio,
          passes: ratio <= 1,
        });
      }
    }
  }
  return { judged, unjudged };
}

interface SpanToJudge {
  readonly span: LimitSpan;
  readonly terms: JudgedLimit['terms'];
  readonly boundsFor: CaseBounds;
}

function judgeSpan({
  span,
  terms,
  boundsFor,
}: SpanToJudge): Pick<JudgedLimit, 'greatest' | 'sense' | 'shares'> | undefined {
  const factored = terms.map(({ case: mark, factor }) => ({
    case: mark,
    factor,
    bounds: boundsFor(mark, span),
  }));
  const known = factored.flatMap(({ bounds, ...term }) =>
    bounds === undefined ? [] : [{ ...term, bounds }],
  );
  if (known.length < factored.length || known.length === 0) return undefined;
  const total = sumOfBounds(known);
  const [up, down] = [extremesOf(total.max).max, extremesOf(total.min).min];
  // Of two of one size the one that hangs down.
  const sense = Math.abs(up.value) > Math.abs(down.value) * (1 + 1e-9) ? 'max' : 'min';
  const greatest = sense === 'max' ? up : down;
  return {
    greatest,
    sense,
    shares: known.map(({ case: mark, factor, bounds }) => ({
      case: mark,
      factor,
      si: at(bounds, greatest.x, factor < 0 ? opposite(sense) : sense),
    })),
  };
}

function opposite(sense: 'max' | 'min'): 'max' | 'min' {
  return sense === 'max' ? 'min' : 'max';
}

function at(bounds: DeflectionBounds, x: number, sense: 'max' | 'min'): number {
  return valueAt(bounds[sense], x, 'left');
}

/** Cases with one state from it, those of choices from their options, those with trains from their range. */
function caseBounds(work: BeamWork): CaseBounds {
  const { solution, arranged, ranges } = work;
  const outcome = ranges.size === 0 ? undefined : optionResults(arranged, solveStates);
  const options = new Map(
    outcome?.kind === 'options'
      ? outcome.cases.map((one) => [one.mark, one] as const)
      : [],
  );
  const rolling = new Set((arranged.trains ?? []).map((train) => train.case));
  return (mark, span) => {
    if (rolling.has(mark)) {
      const deflection = ranges.get(mark)?.deflection;
      return deflection === undefined ? undefined : boundsOfRange(deflection, span);
    }
    const taken = options.get(mark);
    if (taken !== undefined) return boundsOfOptions(taken, span);
    const result = solution.results.find((one) => one.mark === mark);
    return result === undefined ? undefined : boundsOfState(result, span);
  };
}
