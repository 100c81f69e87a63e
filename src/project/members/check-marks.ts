import type { MemberFile } from './read-member.ts';

/** Two members of one mark cannot be told apart: each is at fault, and names the place of the other. */
export function checkMarks(files: readonly MemberFile[]): void {
  for (const file of files) {
    const twin = files.find((other) => other !== file && other.mark === file.mark);
    if (twin === undefined || file.markSpan === undefined) continue;
    const line = twin.reading.lineOf(twin.markSpan?.start ?? 0);
    file.reading.report({
      code: 'mark-taken',
      message: `the mark ${file.mark} is also that of the member in ${twin.reading.file}, line ${line}`,
      span: file.markSpan,
      hints: ['give one of the two another mark'],
    });
  }
}
