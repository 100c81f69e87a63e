import type { SheetMarks } from './mark-sheets.ts';

type JudgedStep = SheetMarks['steps'][number];

/** How the marks given compare with those expected. */
export interface Rates {
  /** Steps expected to be right that were marked otherwise, in words. */
  readonly flagged: readonly string[];
  /** Steps expected not to be right that were marked right, in words. */
  readonly passed: readonly string[];
  /** Share of steps with the verdict expected, 0 to 1. */
  readonly verdicts: number;
  /** Share of steps with findings expected that have those kinds and no others, 0 to 1. */
  readonly kinds: number;
  /** The two shares in a line, then every step that is not as expected. */
  readonly told: string;
}

/** Compares marks with those expected. */
export function ratesOf(marked: readonly SheetMarks[]): Rates {
  const steps = marked.flatMap(({ steps: own }) => own);
  const right = ({ verdict }: { readonly verdict: string }): boolean =>
    verdict === 'right';
  const other = steps.filter(
    ({ expected, found }) => expected.verdict !== found.verdict,
  );
  const slips = steps.filter(({ expected }) => expected.kinds.length > 0);
  const unnamed = slips.filter((step) => !kindsFit(step));
  const verdicts = 1 - other.length / steps.length;
  const kinds = 1 - unnamed.length / slips.length;
  const percent = (rate: number): string => `${(100 * rate).toFixed(1)} %`;
  const flagged = other.filter(({ expected }) => right(expected));
  return {
    flagged: flagged.map(shown),
    passed: other.filter(({ found }) => right(found)).map(shown),
    verdicts,
    kinds,
    told: [
      `${marked.length} sheets, ${steps.length} steps: verdicts ${percent(verdicts)}, kinds of ${slips.length} slips ${percent(kinds)}, right steps flagged ${flagged.length}`,
      ...other.map(shown),
      ...unnamed.map((step) => `kinds: ${shown(step)}`),
    ].join('\n'),
  };
}

/** Every kind expected is found, and no other but as an alternative explanation. */
function kindsFit({ expected, found }: JudgedStep): boolean {
  return (
    expected.kinds.every((kinds) =>
      found.findings.some(({ kind }) => kinds.includes(kind)),
    ) &&
    found.findings.every(
      ({ kind, message }) =>
        expected.kinds.flat().includes(kind) || message.startsWith('Or else'),
    )
  );
}

function shown({ sheet, expected, found }: JudgedStep): string {
  return `${sheet}: ${expected.line}  FOUND ${found.verdict} ${found.findings.map(({ kind, message }) => `${kind}: ${message}`).join(' | ')}`;
}
