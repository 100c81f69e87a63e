import type { Shape } from './shape.ts';
import { reportMisfit } from './misfit.ts';

const form = /^(\d{4})-(\d{2})-(\d{2})$/;

/** A day of the calendar, `2031-03-14` (ISO 8601), with or without quotes. */
export const date: Shape<string> = {
  expects: 'a date',
  schema: { type: 'string', format: 'date' },
  read: (tree, reading) => {
    if (tree.kind !== 'text') {
      reportMisfit(tree, 'a date', reading);
      return undefined;
    }
    if (isDay(tree.text)) return tree.text;
    reading.report({
      code: 'not-a-date',
      message: form.test(tree.text)
        ? `the calendar has no day ${tree.text}`
        : `a date belongs here, not \`${tree.text}\``,
      span: tree.span,
      hints: ['write year, month and day: 2031-03-14'],
    });
    return undefined;
  },
};

function isDay(written: string): boolean {
  const [, year = 0, month = 0, day = 0] = (form.exec(written) ?? []).map(Number);
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days =
    [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  return year > 0 && day >= 1 && day <= days;
}
