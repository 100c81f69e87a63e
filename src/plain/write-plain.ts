import type { Block, Report } from '../report/index.ts';
import { writeBlocks } from './write-blocks.ts';

/** Columns of a terminal as teletypes left them; every one has as many. */
const usualWidth = 80;

/**
 * A report, or some blocks of one, as readable text: lines of at most 80 columns unless told
 * otherwise, each ending in a line break. Figures stand as the words that say what they show, since
 * a terminal draws none; sheets have no numbers here.
 */
export function writePlain(
  of: Report | readonly Block[],
  { width = usualWidth }: { readonly width?: number } = {},
): string {
  const blocks = 'parts' in of ? of.parts.flatMap((part) => part.blocks) : of;
  return writeBlocks(blocks, width)
    .map((line) => `${line.replaceAll('\u00a0', ' ').trimEnd()}\n`)
    .join('');
}
