import type { PdfObject } from '../reading/pdf-object.ts';
import { entriesOf, itemsOf, pointerOf } from '../reading/pdf-object.ts';
import type { Check } from './opened-pdf.ts';

/** Every reference that can be followed from the trailer leads to an object. */
export const aboutReferences: Check = {
  about: 'references',
  find: ({ file }) => {
    const reached = new Set<number>();
    const dangling = new Set<number>();
    const known = new Set(file.numbers);
    const next: PdfObject[] = [file.trailer];
    for (let object = next.pop(); object !== undefined; object = next.pop()) {
      const number = pointerOf(object);
      if (number === undefined) {
        next.push(...itemsOf(object), ...entriesOf(object).values());
      } else if (!known.has(number)) dangling.add(number);
      else if (!reached.has(number)) {
        reached.add(number);
        next.push(file.resolve(object));
      }
    }
    return [...dangling].map((number) => `object ${number} is referred to and missing`);
  },
};
