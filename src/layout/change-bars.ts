import type { GroupMark, Mark } from '../drawing/index.ts';
import type { Sheet } from './paper.ts';
import type { PlacedBand } from './place-bands.ts';
import { drawRevisionMark } from './revision-mark.ts';
import type { PartTools } from './set-part.ts';

// Bars stand left of the text, clear of the frames of boxes.
const barGap = 9;
const barWidth = 1.3;
const markGap = 4;
const markHeight = 14;

interface Run {
  readonly top: number;
  readonly foot: number;
}

/**
 * A bar beside everything on a page that differs from the revision before, in the binding margin
 * where no notes stand, and the revision's mark beside the first. Nothing where nothing differs.
 */
export function changeBars(
  placed: readonly PlacedBand[],
  mark: string | undefined,
  sheet: Sheet,
  { theme, words }: Pick<PartTools, 'theme' | 'words'>,
): readonly GroupMark[] {
  const runs = runsOf(placed);
  const [first] = runs;
  if (first === undefined) return [];
  const bars = runs.map(({ top, foot }): Mark => {
    const path = [
      ['M', 0, top],
      ['L', 0, foot],
    ] as const;
    return {
      kind: 'shape',
      path,
      stroke: { width: barWidth, colour: theme.colour.ink },
    };
  });
  const beside = mark === undefined ? [] : [markBeside(first, mark, { theme, words })];
  return [
    {
      kind: 'group',
      x: sheet.left - barGap,
      y: sheet.top,
      artifact: 'layout',
      marks: [...bars, ...beside],
    },
  ];
}

/** The mark level with the first line of a long run, or beside the middle of a short one. */
function markBeside(
  { top, foot }: Run,
  mark: string,
  tools: Pick<PartTools, 'theme' | 'words'>,
): Mark {
  const drawn = drawRevisionMark(mark, { ...tools, height: markHeight });
  const centre = Math.min((top + foot) / 2, top + markHeight / 2);
  const x = -markGap - barWidth / 2 - drawn.width;
  return { kind: 'group', x, y: centre + markHeight / 2, marks: drawn.marks };
}

/** True where something on the page differs from the revision before. */
export function isChangedPage(placed: readonly PlacedBand[]): boolean {
  return placed.some(({ band }) => band.isChanged === true);
}

/** Stretches of the page that differ, without the bands between that hold nothing. */
function runsOf(placed: readonly PlacedBand[]): readonly Run[] {
  const runs: Run[] = [];
  let isOpen = false;
  for (const { band, y } of placed) {
    if (band.isChanged === true) {
      const before = isOpen ? runs.pop() : undefined;
      runs.push({ top: before?.top ?? y, foot: y + band.height });
      isOpen = true;
    } else if (band.height > 0 && band.isGap !== true) isOpen = false;
  }
  return runs;
}
