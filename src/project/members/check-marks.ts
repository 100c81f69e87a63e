import type { MemberFile } from './read-member.ts';

/** Two members of one mark cannot be told apart: each is at fault, and names the place of the other. */
export function checkMarks(files: readonly MemberFile[]): void {
  for (const file of files) {
    const twin = files.find((other) => other !== file && other.mark === file.mark);
    const span = file.beam?.mark?.span;
    if (twin === undefined || span === undefined) continue;
    const line = twin.reading.lineOf(twin.beam?.mark?.span.start ?? 0);
    file.reading.report({
      code: 'mark-taken',
      message: `the mark ${file.mark} is also that of the member in ${twin.reading.file}, line ${line}`,
      span,
      hints: ['give one of the two another mark'],
    });
  }
}
