import { isClose, isCloseIn } from '../matching/closeness.ts';
import { linearForm, type Meanings } from '../reading/linear-form.ts';
import type { Written, WrittenLine } from '../reading/written.ts';
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
    if (isClose(here, before) || isCloseIn(unitOf(link), here, before)) return [];
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

/** The unit in which a link is written that is a number, whatever its sign; 1 for one that is worked out. */
export function unitOf(link: Written): number {
  const [only, ...others] = link.kind === 'sum' ? link.terms : [];
  const number = only !== undefined && others.length === 0 ? only.of : link;
  return number.kind === 'number' ? number.quantity.unit.inSi : 1;
}
