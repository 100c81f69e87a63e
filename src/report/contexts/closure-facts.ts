import type { ProjectClosure } from '../../derivation/index.ts';
import { displayUnit, formatNumber, unitText } from '../../units/index.ts';
import type { MemberReport, ReportInput } from '../report-input.ts';

/** Columns that stand side by side on a sheet; more cases go into further tables. */
const mostCases = 7;

interface Row {
  readonly label: string;
  readonly values: readonly string[];
}

/** Facts of the closure over the whole project; undefined where there is none to print. */
export function closureFacts({
  project,
  members,
  closures,
}: Pick<ReportInput, 'project' | 'members' | 'closures'>): object | undefined {
  if (closures.length === 0) return undefined;
  const { units: system, figures } = project.definition;
  const printing = { system, figures: figures.value };
  return {
    unit: unitText(displayUnit(system, 'force')),
    tables: closures.flatMap((closure) =>
      chunks(closure.cases.length).map((columns) =>
        tableOf(closure, columns, printing),
      ),
    ),
    hasBeyond: closures.some(({ beyond }) => beyond.length > 0),
    typical: project.members.flatMap(({ mark, typical }) =>
      typical === undefined ? [] : [mark],
    ),
    without: members.flatMap((member) => (isFailed(member) ? [member.mark] : [])),
    closes: closures.every(({ closes }) => closes),
  };
}

const isFailed = (
  member: MemberReport,
): member is Extract<MemberReport, { kind: 'failed' }> => member.kind === 'failed';

/** Indices of cases, table by table. */
function chunks(count: number): readonly (readonly number[])[] {
  const all = Array.from({ length: count }, (_, index) => index);
  return all
    .filter((index) => index % mostCases === 0)
    .map((first) => all.slice(first, first + mostCases));
}

interface Printing {
  readonly system: 'us' | 'si';
  readonly figures: number;
}

function tableOf(
  closure: ProjectClosure,
  columns: readonly number[],
  printing: Printing,
): object {
  const { along, cases, applied, again, beyond, ground, sums } = closure;
  const write = writerOf(closure, printing);
  const row = (label: string, values: readonly number[], times: number = 1): Row => ({
    label,
    values: columns.map((index) => write((values[index] ?? 0) * times, index)),
  });
  const felt = ({ values }: { readonly values: readonly number[] }): boolean =>
    columns.some((index) => values[index] !== 0);
  return {
    isVertical: along === 'y',
    cases: columns.map((index) => cases[index]),
    applied: applied.filter(felt).map(({ mark, values }) => row(mark, values)),
    again: again.filter(felt).map(({ mark, point, times, values }) => ({
      ...row(`${mark}.${point}`, values, times - 1),
      times: plain(times),
      more: plain(times - 1),
    })),
    beyond: beyond
      .filter(felt)
      .map(({ mark, point, values }) => row(`${mark}.${point}`, values)),
    ground: ground
      .filter(felt)
      .map(({ mark, point, values }) => row(`${mark}.${point}`, values)),
    into: row(
      '',
      sums.map((sum) => sum.applied + sum.again + sum.beyond),
    ).values,
    out: row(
      '',
      sums.map((sum) => sum.ground),
    ).values,
    residuals: columns.map((index) => shareOf(sums[index])),
  };
}

/** Writes a force of a case so that its column has one number of decimals, the project's figures in its largest. */
function writerOf(
  { sums, ground, applied }: ProjectClosure,
  { system, figures }: Printing,
): (si: number, index: number) => string {
  const unit = displayUnit(system, 'force');
  const decimals = sums.map((sum, index) => {
    const largest = Math.max(
      ...[sum.applied, sum.ground].map(Math.abs),
      ...[...ground, ...applied].map(({ values }) => Math.abs(values[index] ?? 0)),
    );
    if (largest === 0) return 0;
    return Math.max(0, figures - 1 - Math.floor(Math.log10(largest / unit.inSi)));
  });
  return (si, index) => {
    const count = decimals[index] ?? 0;
    const value = si / unit.inSi;
    // What rounds to nothing is nothing: a sum that closes leaves 1e-16 of its terms.
    const shown = Number(value.toFixed(count)) === 0 ? 0 : value;
    return formatNumber(shown, { kind: 'decimals', count }).text;
  };
}

function shareOf(sum: ProjectClosure['sums'][number] | undefined): string {
  if (sum === undefined || sum.residual === 0 || sum.scale === 0) return '0';
  return (Math.abs(sum.residual) / sum.scale).toExponential(1);
}

const plain = (count: number): string => String(Number(count.toPrecision(6)));
