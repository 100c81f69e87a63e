import type { DirectionWord } from './written.ts';

/** How people say which way something acts. */
const words: Readonly<Record<string, DirectionWord>> = {
  up: 'up',
  upward: 'up',
  upwards: 'up',
  '↑': 'up',
  down: 'down',
  downward: 'down',
  downwards: 'down',
  '↓': 'down',
  left: 'left',
  '←': 'left',
  right: 'right',
  '→': 'right',
  clockwise: 'clockwise',
  cw: 'clockwise',
  '↻': 'clockwise',
  counterclockwise: 'counterclockwise',
  'counter-clockwise': 'counterclockwise',
  anticlockwise: 'counterclockwise',
  ccw: 'counterclockwise',
  '↺': 'counterclockwise',
  sagging: 'sagging',
  sag: 'sagging',
  hogging: 'hogging',
  hog: 'hogging',
  tension: 'tension',
  compression: 'compression',
};

const atEnd =
  /[\s,;]*\(?\s*(?:acting\s+|acts\s+)?(?:to\s+the\s+)?([\p{L}-]+|[↑↓←→↻↺])\s*\)?\s*\.?\s*$/u;

/** A line without the direction that stands in words at its end; a symbol of that name is left alone. */
export function splitDirection(
  text: string,
  names: readonly string[],
): { readonly text: string; readonly direction?: DirectionWord } {
  const found = atEnd.exec(text);
  const word = found?.[1]?.toLowerCase() ?? '';
  const direction = Object.hasOwn(words, word) ? words[word] : undefined;
  if (found === null || direction === undefined || names.includes(found[1] ?? ''))
    return { text };
  return { text: text.slice(0, found.index), direction };
}
