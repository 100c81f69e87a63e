import { isClose } from '../matching/closeness.ts';
import { linearForm, type Meanings } from '../reading/linear-form.ts';
import type { WrittenLine } from '../reading/written.ts';
import type { Finding } from '../verdict.ts';

/** The links of a chain after the first equation must each equal the one before. */
export function chainFindings(
  line: WrittenLine,
  meanings: Meanings,
  value: (key: string) => number | undefined,
  show: (si: number, like: number) => string,
): readonly Finding[] {
  const numbers = line.links.map((link) => {
    const { form } = linearForm(link, meanings);
    if (form === undefined) return undefined;
    let sum = form.constant;
    for (const [key, share] of form.unknowns) {
      const known = value(key);
      if (known === undefined) return undefined;
      sum += share * known;
    }
    return sum;
  });
  return line.links.flatMap((link, index): readonly Finding[] => {
    const [before, here] = [numbers[index - 1], numbers[index]];
    if (index < 2 || before === undefined || here === undefined) return [];
    if (isClose(here, before)) return [];
    const term = line.text.slice(link.start, link.end);
    return [
      {
        kind: 'arithmetic',
        term,
        message: `What stands before it comes to ${show(before, here)}.`,
      },
    ];
  });
}
