import type { Mark } from '../drawing/index.ts';
import type { RunningFoot } from '../report/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Sheet } from './paper.ts';
import { drawRevisionMark } from './revision-mark.ts';
import { rule } from './ruling.ts';
import { columnWidths } from './table/column-widths.ts';
import type { SetWord, Words } from './words.ts';

/** What the strip at the foot of a sheet says. */
export interface FootText {
  readonly foot: RunningFoot;
  readonly sheet: string;
  readonly sheetCount: string;
  /** The revision's mark, where something on the sheet differs from the revision before. */
  readonly changeMark?: string;
}

/** A word spelled out in muted type and what it names, which may be left open to be filled in by hand. */
interface Entry {
  readonly label: string;
  readonly value: string;
  readonly isOpen?: boolean;
  /** A revision's mark, drawn behind the value. */
  readonly mark?: string;
}

const size = 7.8;
const lineGap = 10.5;
const ruleAbove = 11;
const entryGap = 13;
const labelGap = 3;
const openWidth = 54;
const blankDrop = 1.5;
const markHeight = 9.6;
const markDrop = 1.4;

/**
 * The strip of identification along the foot of every sheet: one hairline, and two lines below it
 * from the left edge of the text to the right edge of the margin column. Top line: project,
 * number, status and sheet; below: subject, revision, prepared and checked.
 */
export function setFoot(
  { foot, sheet, sheetCount, changeMark }: FootText,
  paper: Sheet,
  { theme, words }: { readonly theme: Theme; readonly words: Words },
): readonly Mark[] {
  const length = paper.right - paper.left;
  const top = paper.top + paper.column.height;
  const first = top + (paper.height - top) * 0.36 + ruleAbove;
  const write = lineWriter({ paper, theme, words });
  return [
    rule({ x: paper.left, y: first - ruleAbove, length }, theme, theme.line.dimension),
    ...write(first, {
      left: [
        { label: 'Project', value: foot.project },
        ...optional('Number', foot.number),
      ],
      right: [
        ...optional('Status', statusOf(foot)),
        { label: 'Sheet', value: `${sheet} of ${sheetCount}` },
      ],
    }),
    ...write(first + lineGap, {
      left: [{ label: '', value: foot.subject }],
      right: [
        ...optional('Revision', joined(foot.revision, foot.revisionDate)).map(
          (entry) =>
            changeMark === undefined ? entry : { ...entry, mark: changeMark },
        ),
        signed('Prepared', foot.prepared),
        signed('Checked', foot.checked),
      ],
    }),
  ];
}

function optional(label: string, value: string | undefined): readonly Entry[] {
  return value === undefined || value === '' ? [] : [{ label, value }];
}

function statusOf({ status, supersededBy }: RunningFoot): string {
  return supersededBy === undefined ? status : `${status} by ${supersededBy}`;
}

function signed(label: string, value: string): Entry {
  return value === '' ? { label, value, isOpen: true } : { label, value };
}

function joined(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join(', ');
}

interface FootLine {
  readonly left: readonly Entry[];
  readonly right: readonly Entry[];
}

interface FootLook {
  readonly paper: Sheet;
  readonly theme: Theme;
  readonly words: Words;
}

interface SetEntry {
  readonly width: number;
  readonly marks: readonly Mark[];
}

// What stands on the right may take this share of the line before it is cut short.
const rightShare = 0.72;
const leastEntry = 50;

/** Writes the entries of a line from the left edge and up to the right edge of what is printed. */
function lineWriter(look: FootLook): (y: number, line: FootLine) => readonly Mark[] {
  const { left: start, right: end } = look.paper;
  const whole = end - start;
  return (y, { left, right }) => {
    const rightSet = setEntries(right, whole * rightShare, look);
    const rightWidth = widthOf(rightSet);
    const leftSet = setEntries(left, whole - rightWidth - entryGap, look);
    return [
      ...placeEntries(leftSet, start, y),
      ...placeEntries(rightSet, end - rightWidth, y),
    ];
  };
}

/** Sets entries into a room; where they do not fit the longest are cut short. */
function setEntries(
  entries: readonly Entry[],
  room: number,
  look: FootLook,
): readonly SetEntry[] {
  const natural = entries.map((entry) => setEntry(entry, Infinity, look));
  const wishes = natural.map(({ width }) => ({ natural: width, least: leastEntry }));
  const widths = columnWidths(wishes, room - (entries.length - 1) * entryGap);
  return entries.map((entry, index) =>
    setEntry(entry, (widths[index] ?? 0) + 1e-6, look),
  );
}

function setEntry(
  { label, value, isOpen, mark }: Entry,
  room: number,
  look: FootLook,
): SetEntry {
  const { theme, words } = look;
  const setLabel = words.inLook({ face: 'text', size, colour: theme.colour.muted });
  const setValue = words.inLook({ face: 'text', size, colour: theme.colour.ink });
  const name = setLabel(label);
  const at = label === '' ? 0 : name.width + labelGap;
  if (isOpen === true) {
    const from = { x: at, y: blankDrop, length: openWidth };
    const blank = rule(from, theme, theme.line.dimension);
    return { width: at + openWidth, marks: [...name.marks, blank] };
  }
  const drawn =
    mark === undefined
      ? undefined
      : drawRevisionMark(mark, { theme, words, height: markHeight });
  const beside = drawn === undefined ? 0 : labelGap + drawn.width;
  const { width, marks } = setValue(shorten(value, room - at - beside, setValue));
  const placed: Mark = { kind: 'group', x: at, y: 0, marks };
  const whole = [...name.marks, placed];
  if (drawn === undefined) return { width: at + width, marks: whole };
  const x = at + width + labelGap;
  const triangle: Mark = { kind: 'group', x, y: markDrop, marks: drawn.marks };
  return { width: at + width + beside, marks: [...whole, triangle] };
}

/** A value as it is, or cut short with an ellipsis where it is wider than its room. */
function shorten(value: string, room: number, setValue: SetWord): string {
  if (setValue(value).width <= room) return value;
  const letters = Array.from(value);
  const short = (): string => `${letters.join('').trimEnd()}…`;
  while (letters.length > 1 && setValue(short()).width > room) letters.pop();
  return short();
}

function widthOf(entries: readonly SetEntry[]): number {
  const gaps = Math.max(0, entries.length - 1) * entryGap;
  return entries.reduce((sum, { width }) => sum + width, gaps);
}

function placeEntries(
  entries: readonly SetEntry[],
  left: number,
  y: number,
): readonly Mark[] {
  let x = left;
  return entries.map(({ width, marks }): Mark => {
    const placed: Mark = { kind: 'group', x, y, marks };
    x += width + entryGap;
    return placed;
  });
}
