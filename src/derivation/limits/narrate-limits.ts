import { formatRatio, unitText, displayUnit } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { elasticCurveFigure } from '../pictures/elastic-curve.ts';
import { cell, decimalsOf } from '../printing.ts';
import type { LimitRow, LimitStep, Step } from '../steps.ts';
import type { StateOfSum } from './chord-statement.ts';
import type { JudgedLimit, JudgedLimits, UnjudgedLimit } from './judge-limits.ts';
import { limitSpans, spanName } from './limit-spans.ts';
import { narrateLimit } from './narrate-limit.ts';

/**
 * Item 9 as far as deflections go: how they are measured, the worst span of every limit worked, all of them in a
 * table, the elastic curve of the one that comes out worst; and the limits that are not judged, with the reason.
 */
export function narrateLimits(
  context: MemberContext,
  { judged, unjudged }: JudgedLimits,
  stateOf: StateOfSum,
): readonly Step[] {
  if (judged.length === 0 && unjudged.length === 0) return [];
  const worst = worstOf(judged);
  const state = worst === undefined ? undefined : stateOf(worst.terms, worst.entry);
  const entries = [...new Set(judged.map(({ entry }) => entry))];
  return [
    ...basis(context, judged),
    ...entries.flatMap((entry): readonly Step[] => {
      const one = worstOf(judged.filter((other) => other.entry === entry));
      return one === undefined ? [] : [narrateLimit(context, one, stateOf)];
    }),
    ...(judged.length === 0 ? [] : [table(context, judged)]),
    ...(state === undefined || worst === undefined || worst.greatest.value === 0
      ? []
      : [
          {
            kind: 'figure' as const,
            shows: 'elastic-curve' as const,
            entry: worst.entry,
            figure: elasticCurveFigure(context, state),
          },
        ]),
    ...unchecked(unjudged),
  ];
}

/** The limit that comes out worst; of several that come out alike the first. */
export function worstOf(judged: readonly JudgedLimit[]): JudgedLimit | undefined {
  const [first, ...others] = judged;
  if (first === undefined) return undefined;
  return others.reduce(
    (worst, one) => (one.ratio > worst.ratio * (1 + 1e-9) ? one : worst),
    first,
  );
}

function basis(
  { structure }: MemberContext,
  judged: readonly JudgedLimit[],
): readonly LimitStep[] {
  const [first] = judged;
  if (first === undefined) return [];
  const spans = limitSpans(structure);
  const hasOverhangs = spans.some(({ kind }) => kind === 'overhang');
  return [
    {
      kind: 'limit-basis',
      from: first.from,
      hasSpans: spans.some(({ kind }) => kind === 'span'),
      hasOverhangs,
      isDoubled: judged.some(({ size }) => size.kind === 'share' && size.times === 2),
      hasHinges: structure.hinges.length > 0,
    },
  ];
}

function table(context: MemberContext, judged: readonly JudgedLimit[]): LimitStep {
  const { printing } = context;
  const demands = decimalsOf(
    printing,
    'deflection',
    judged.map(({ greatest }) => greatest.value),
  );
  const limits = decimalsOf(
    printing,
    'deflection',
    judged.map(({ size }) => size.si),
  );
  return {
    kind: 'limit-table',
    unit: unitText(displayUnit(printing.system, 'deflection')),
    rows: judged.map((one): LimitRow => ({
      entry: one.entry,
      span: spanName(one.span),
      isOverhang: one.span.kind === 'overhang',
      demand: cell(printing, 'deflection', one.greatest.value, demands),
      at: placeAtStation(context, one.greatest.x),
      text: one.text,
      limit: cell(printing, 'deflection', one.size.si, limits),
      ratio: formatRatio(one.ratio),
      passes: one.passes,
    })),
    failing: judged.filter(({ passes }) => !passes).length,
  };
}

function unchecked(unjudged: readonly UnjudgedLimit[]): readonly LimitStep[] {
  return (['no-stiffness', 'strength', 'moving-supports'] as const).flatMap((why) => {
    const limits = unjudged
      .filter((one) => one.why === why)
      .map(({ entry, text, span }) => ({
        entry,
        text,
        ...(span === undefined ? {} : { span: spanName(span) }),
      }));
    return limits.length === 0 ? [] : [{ kind: 'limits-unchecked', why, limits }];
  });
}
