import { nearest } from '../../diagnostics/index.ts';
import type { Reading } from '../reading.ts';
import type { Placed } from '../shape/shape.ts';
import { listed } from '../shape/listed.ts';

/**
 * Members in sheet order: those that `sheet_order` lists, then the others as they stand. Marks
 * that no member has, or listed twice, are reported.
 */
export function inSheetOrder<T extends { readonly file: { readonly mark: string } }>(
  members: readonly T[],
  wanted: readonly Placed<string>[],
  reading: Reading,
): readonly T[] {
  const marks = members.map((member) => member.file.mark);
  for (const [index, { value, span }] of wanted.entries()) {
    const isTwice = wanted.findIndex((other) => other.value === value) < index;
    if (!isTwice && marks.includes(value)) continue;
    const near = isTwice ? undefined : nearest(value, marks);
    reading.report({
      code: isTwice ? 'listed-twice' : 'unknown-member',
      message: isTwice
        ? `${value} is listed already`
        : `the project has no member ${value}`,
      span,
      hints: [
        isTwice
          ? 'list each member once'
          : near === undefined
            ? `members: ${listed(marks)}`
            : `write ${near}`,
      ],
    });
  }
  const rank = (member: T): number => {
    const found = wanted.findIndex((one) => one.value === member.file.mark);
    return found < 0 ? wanted.length : found;
  };
  return [...members].sort((one, other) => rank(one) - rank(other));
}
