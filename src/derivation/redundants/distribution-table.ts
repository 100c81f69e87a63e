import type { Expression } from '../../equation/index.ts';
import {
  carriedShare,
  type EndMoments,
  type MomentDistribution,
} from '../../statics/index.ts';
import { cell, decimalsOf, numberText, unitName, value } from '../printing.ts';
import type { ContinuousStep, DistributionTable } from '../steps/three-moment-steps.ts';
import { spansOf, type ContinuousSetting } from './continuous-setting.ts';

/** Spans side by side in one table. */
const mostSpans = 4;

type Row = DistributionTable['rows'][number];

/**
 * The distribution as a table, an end of a span a column: what it starts from, each balance and each
 * carry-over, the sums, and beside them the exact moments with the greatest difference.
 */
export function distributionTable(
  setting: ContinuousSetting,
  work: MomentDistribution,
): Extract<ContinuousStep, { kind: 'distribution-table' }> {
  const { printing } = setting.context;
  const exact = exactMoments(setting);
  const rows = gathered(work);
  // One more than elsewhere: what is carried last is a small share of what stands above it.
  const decimals =
    1 +
    decimalsOf(
      printing,
      'moment',
      [...rows.map(({ moments }) => moments), work.sums, exact].flatMap(flat),
    );
  const printed = (moments: EndMoments): readonly (Expression | null)[] =>
    flat(moments).map((si) =>
      si === 0 ? null : cell(printing, 'moment', si, decimals),
    );
  const full = (moments: EndMoments): readonly Expression[] =>
    flat(moments).map((si) => cell(printing, 'moment', si, decimals));
  const all: readonly Row[] = [
    ...rows.map(({ what, moments }) => ({
      what,
      cells: what === 'start' ? full(moments) : printed(moments),
    })),
    { what: 'sum', cells: full(work.sums) },
    { what: 'exact', cells: full(exact) },
  ];
  const off = differences(work.sums, exact);
  const greatest = Math.max(...flat(exact).map(Math.abs), 0);
  return {
    kind: 'distribution-table',
    unit: unitName(printing, 'moment'),
    share: carriedText,
    limit: value(printing, 'moment', work.limit),
    tables: tablesOf(setting, work, all),
    difference: value(printing, 'moment', off),
    isExact: off <= 1e-9 * greatest,
    differenceShare: `${numberText((100 * off) / (greatest === 0 ? 1 : greatest), 2)} %`,
    couples: setting.beam.supports.slice(1, -1).flatMap(({ point }, index) => {
      const couple = setting.work.joints[index + 1]?.couple;
      return couple === undefined || couple.left + couple.right === 0 ? [] : [point];
    }),
  };
}

/** The share at which distribution stops. */
export const carriedText: string = `${carriedShare * 100} %`;

/** The rows with those that only prepare (releases and what they carry) gathered into the first. */
function gathered({ rows }: MomentDistribution): readonly {
  readonly what: 'start' | 'balance' | 'carry-over';
  readonly moments: EndMoments;
}[] {
  const at = rows.findIndex(({ what }) => what === 'balance');
  const [opening, rest] = at < 0 ? [rows, []] : [rows.slice(0, at), rows.slice(at)];
  const start = opening
    .map(({ moments }) => moments)
    .reduce((a, b) =>
      a.map(({ left, right }, index) => ({
        left: left + (b[index]?.left ?? 0),
        right: right + (b[index]?.right ?? 0),
      })),
    );
  return [
    { what: 'start', moments: start },
    ...rest.map(({ what, moments }) => ({
      what: what === 'balance' ? ('balance' as const) : ('carry-over' as const),
      moments,
    })),
  ];
}

/** What the distribution starts from on both ends of every span. */
export function startingMoments(work: MomentDistribution): EndMoments {
  return gathered(work)[0]?.moments ?? [];
}

/** The exact moments on the ends; a couple at a joint counts on the end left of it, as in the table. */
function exactMoments({ work, beam }: ContinuousSetting): EndMoments {
  return work.spans.map(({ moments: [left, right] }, index) => {
    const couple = work.joints[index + 1]?.couple;
    const own = couple === undefined ? 0 : couple.left + couple.right;
    return { left, right: index === beam.spans.length - 1 ? right : right - own };
  });
}

function differences(a: EndMoments, b: EndMoments): number {
  const [x, y] = [flat(a), flat(b)];
  return Math.max(0, ...x.map((si, index) => Math.abs(si - (y[index] ?? 0))));
}

function flat(moments: EndMoments): readonly number[] {
  return moments.flatMap(({ left, right }) => [left, right]);
}

function tablesOf(
  setting: ContinuousSetting,
  { joints }: MomentDistribution,
  rows: readonly Row[],
): readonly DistributionTable[] {
  const { printing } = setting.context;
  const spans = spansOf(setting);
  const factors = spans.flatMap((_, index): readonly (Expression | null)[] =>
    [joints[index]?.right ?? 0, joints[index + 1]?.left ?? 0].map((share) =>
      share === 0 ? null : cell(printing, 'pure', share, 3),
    ),
  );
  const ends = spans.flatMap(({ symbols }) =>
    ([0, 1] as const).map((end) => symbols.moment(end).subscript ?? ''),
  );
  const tables: DistributionTable[] = [];
  for (let from = 0; from < ends.length; from += 2 * mostSpans) {
    const part = <T>(of: readonly T[]): readonly T[] =>
      of.slice(from, from + 2 * mostSpans);
    tables.push({
      ends: part(ends),
      factors: part(factors),
      rows: rows.map(({ what, cells }) => ({ what, cells: part(cells) })),
    });
  }
  return tables;
}
