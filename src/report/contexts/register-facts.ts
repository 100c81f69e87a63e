import type { Comment, MarkedFile } from '../../review/index.ts';
import type { ReportInput } from '../report-input.ts';

/** A row of the register: a comment under its number in the package, with the worked file that it is on. */
export type RegisterRow = Comment & { readonly file: string };

/** The comments of all check prints, numbered through the package. */
export function registerOf({
  worked,
}: Pick<ReportInput, 'worked'>): readonly RegisterRow[] {
  return worked
    .flatMap(({ file, comments }) => comments.map((comment) => ({ ...comment, file })))
    .map((row, index) => ({ ...row, number: index + 1 }));
}

/** Facts of the comment register; `anchorOf` tells where a file's check print stands, or a step of it. */
export function registerFacts(
  input: Pick<ReportInput, 'worked'>,
  anchorOf: (file: Pick<MarkedFile, 'file'>, step?: number) => string,
): object {
  const rows = registerOf(input);
  return {
    rows: rows.map((row) => ({
      ...row,
      comment: inQuotes(row.comment),
      anchor: anchorOf(row, row.step),
    })),
    unmarked: unmarkedOf(input).map((file) => ({
      file: file.file,
      anchor: anchorOf(file),
    })),
  };
}

/** What the cover says of the register: how many comments nobody has closed yet, and how they stand. */
export function commentCount(input: Pick<ReportInput, 'worked'>): object | undefined {
  if (input.worked.length === 0) return undefined;
  const left = registerOf(input).filter(({ status }) => status !== 'closed');
  const states = (['open', 'answered', 'reworked'] as const)
    .map((state) => ({
      state,
      count: left.filter((row) => row.status === state).length,
    }))
    .filter(({ count }) => count > 0);
  return {
    notClosed: left.length,
    states: states.map(({ state, count }) => `${count} ${state}`),
    unmarked: unmarkedOf(input).length,
  };
}

const unmarkedOf = ({ worked }: Pick<ReportInput, 'worked'>): readonly MarkedFile[] =>
  worked.filter(({ fault }) => fault !== undefined);

/** A message as it is printed: what a terminal sets off by backticks stands in quotation marks. */
export function inQuotes(message: string): string {
  return message.replace(/`([^`]*)`/g, '“$1”');
}
