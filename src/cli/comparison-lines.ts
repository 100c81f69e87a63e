import type {
  CheckChange,
  ComparedFigure,
  ComparedPackage,
  Comparison,
  InputChange,
  Reach,
  ResultChange,
} from '../index.ts';
import { printable, type Paint } from './paint.ts';

/** What lines need to know besides the comparison. */
export interface ComparisonSetting {
  readonly paint: Paint;
  /** Writes a ratio of demand to capacity. */
  readonly writeRatio: (ratio: number) => string;
  /** Writes a value as the package prints it, without its unit. */
  readonly writeFigure: (value: number) => string;
}

/** A comparison on the terminal: what fails now comes first, whose check is open again last. */
export function comparisonLines(
  comparison: Comparison,
  { paint, writeRatio, writeFigure }: ComparisonSetting,
): string {
  const { earlier, later, inputs, outcomes, checks, results, reach } = comparison;
  const isNew = ({ kind }: CheckChange): boolean => kind === 'newly failing';
  const checkLine = (check: CheckChange): string =>
    checkWords(check, writeRatio, paint);
  const section = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0
      ? []
      : [`${paint('strong', title)}\n${lines.map((line) => `  ${line}\n`).join('')}`];
  const sections = [
    ...section('Newly failing', checks.filter(isNew).map(checkLine)),
    ...section(
      'Solved or not',
      outcomes.map(
        ({ member, kind, why }) =>
          `${printable(member)}: ${kind === 'no longer solved' ? paint('error', kind) : kind}${why === undefined ? '' : `, ${printable(why)}`}`,
      ),
    ),
    ...section('Inputs', byMember(inputs, 'project', inputWords, paint)),
    ...section(
      'Results',
      byMember(results, '', (result) => resultWords(result, writeFigure), paint),
    ),
    ...section('Other checks', checks.filter((check) => !isNew(check)).map(checkLine)),
    ...section('Checks open again', reach.map(reachWords)),
  ];
  const head = `${packageWords(earlier)} → ${packageWords(later)}\n`;
  return sections.length === 0
    ? `${head}\nNothing differs.\n`
    : `${head}\n${sections.join('\n')}`;
}

function packageWords({ number, title, revision }: ComparedPackage): string {
  return printable(
    [
      number === null ? title : `${number} ${title}`,
      ...(revision === null ? [] : [`revision ${revision}`]),
    ].join(', '),
  );
}

/** Lines under the mark of the member that they are about, in their order. */
function byMember<T extends { readonly member?: string }>(
  changes: readonly T[],
  otherwise: string,
  words: (change: T) => string,
  paint: Paint,
): readonly string[] {
  const groups = new Map<string, readonly T[]>();
  for (const change of changes) {
    const member = change.member ?? otherwise;
    groups.set(member, [...(groups.get(member) ?? []), change]);
  }
  return [...groups].flatMap(([member, group]) => [
    paint('quiet', printable(member)),
    ...group.map((change) => `  ${words(change)}`),
  ]);
}

function inputWords({ kind, what, from, to }: InputChange): string {
  // A change of value shows itself; any other is named.
  const sort = kind === 'changed' && (from ?? to) !== undefined ? '' : `${kind} `;
  const values = [from, to].filter((one) => one !== undefined).join(' → ');
  return printable(`${sort}${what}${values === '' ? '' : `: ${values}`}`);
}

function resultWords(
  { what, before, after, share }: ResultChange,
  write: ComparisonSetting['writeFigure'],
): string {
  const values = [before, after]
    .map((figure) =>
      figure === undefined ? 'none' : `${write(figure.value)} ${figure.unit}`,
    )
    .join(' → ');
  const percent = share === undefined ? '' : ` (${percentWords(share)})`;
  const place = placeWords(before, after, write);
  return printable(`${what}: ${values}${percent}${place}`);
}

/** Where the later value stands; where it stood too, if it has moved. */
function placeWords(
  before: ComparedFigure | undefined,
  after: ComparedFigure | undefined,
  write: ComparisonSetting['writeFigure'],
): string {
  const words = (figure: ComparedFigure | undefined): string =>
    figure === undefined
      ? ''
      : [
          ...(figure.entry === undefined ? [] : [`by ${figure.entry}`]),
          ...(figure.at === undefined
            ? []
            : [`at ${write(figure.at.value)} ${figure.at.unit}`]),
        ].join(' ');
  const [was, is] = [words(before), words(after)];
  if (is === '') return was === '' ? '' : `, ${was}`;
  return was === '' || was === is ? `, ${is}` : `, ${is} (was ${was})`;
}

function checkWords(
  { kind, member, what, before, after }: CheckChange,
  writeRatio: ComparisonSetting['writeRatio'],
  paint: Paint,
): string {
  const ratios = [before, after]
    .flatMap((one) => (one === undefined ? [] : [writeRatio(one.ratio)]))
    .join(' → ');
  const role = after?.passes === false ? 'error' : kind === 'mended' ? 'good' : 'quiet';
  const told = kind === 'newly failing' ? '' : `, ${paint(role, kind)}`;
  const shown = kind === 'newly failing' ? paint('error', ratios) : ratios;
  return `${printable(`${member}: ${what}`)}, ratio ${shown}${told}`;
}

function reachWords({ member, by, from }: Reach): string {
  const how = {
    definition: 'its own file',
    project: 'what the project shares',
    carried: `carries ${from.join(', ')}`,
  }[by];
  return printable(`${member} (${how})`);
}

function percentWords(share: number): string {
  const percent = share * 100;
  const size = Math.abs(percent);
  const sign = percent < 0 ? '−' : '+';
  return size < 0.1
    ? `${percent < 0 ? 'down' : 'up'} less than 0.1 %`
    : `${sign}${size < 10 ? size.toFixed(1) : size.toFixed(0)} %`;
}
