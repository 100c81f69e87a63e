import type { GroupMark } from '../drawing/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Sheet } from './paper.ts';
import type { Words } from './words.ts';

const face = 'text-bold';
const sizeForMeasure = 100;
const widthShare = 0.86;
const largest = 150;

/** A word across the whole sheet, large and light, behind the text: what is void or superseded cannot be taken for valid. */
export function setStamp(
  word: string,
  sheet: Sheet,
  { theme, words }: { readonly theme: Theme; readonly words: Words },
): readonly GroupMark[] {
  const text = word.toUpperCase();
  const colour = theme.colour.fill;
  const measure = words.inLook({ face, size: sizeForMeasure, colour })(text).width;
  const room = sheet.right - sheet.left;
  const size = Math.min(largest, (sizeForMeasure * room * widthShare) / measure);
  const { width, marks } = words.inLook({ face, size, colour })(text);
  const x = sheet.left + (room - width) / 2;
  const y = sheet.top + sheet.column.height * 0.46;
  return [{ kind: 'group', x, y, marks, artifact: 'pagination' }];
}
