import type { Mark } from '../drawing/index.ts';
import type { RunningFoot } from '../report/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Sheet } from './paper.ts';
import { rule } from './ruling.ts';
import type { Words } from './words.ts';

/** What the strip at the foot of a sheet says. */
export interface FootText {
  readonly foot: RunningFoot;
  readonly sheet: string;
  readonly sheetCount: string;
}

/** A word spelled out in muted type and what it names, which may be left open to be filled in by hand. */
interface Entry {
  readonly label: string;
  readonly value: string;
  readonly isOpen?: boolean;
}

const size = 7.8;
const lineGap = 10.5;
const ruleAbove = 11;
const entryGap = 13;
const labelGap = 3;
const openWidth = 54;

/**
 * The strip of identification along the foot of every sheet: one hairline, and two lines below it
 * from the left edge of the text to the right edge of the margin column. Top line: project,
 * number, status and sheet; below: subject, revision, prepared and checked.
 */
export function setFoot(
  { foot, sheet, sheetCount }: FootText,
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
        ...optional('Status', foot.status),
        { label: 'Sheet', value: `${sheet} of ${sheetCount}` },
      ],
    }),
    ...write(first + lineGap, {
      left: [{ label: '', value: foot.subject }],
      right: [
        ...optional('Revision', joined(foot.revision, foot.revisionDate)),
        signed('Prepared', foot.prepared),
        signed('Checked', foot.checked),
      ],
    }),
  ];
}

function optional(label: string, value: string | undefined): readonly Entry[] {
  return value === undefined || value === '' ? [] : [{ label, value }];
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

function lineWriter({
  paper,
  theme,
  words,
}: FootLook): (y: number, line: FootLine) => readonly Mark[] {
  const muted = { face: 'text', size, colour: theme.colour.muted } as const;
  const ink = { face: 'text', size, colour: theme.colour.ink } as const;

  const setEntry = ({ label, value, isOpen }: Entry, room: number): SetEntry => {
    const name = words.inLook(muted)(label);
    const at = label === '' ? 0 : name.width + labelGap;
    if (isOpen === true) {
      const blank = rule(
        { x: at, y: 1.5, length: openWidth },
        theme,
        theme.line.dimension,
      );
      return { width: at + openWidth, marks: [...name.marks, blank] };
    }
    const { width, marks } = words.inLook(ink)(shorten(value, room - at));
    const placed: Mark = { kind: 'group', x: at, y: 0, marks };
    return { width: at + width, marks: [...name.marks, placed] };
  };
  /** The value, cut short with an ellipsis where it is wider than its room. */
  const shorten = (value: string, room: number): string => {
    const widthOf = (text: string): number => words.inLook(ink)(text).width;
    if (widthOf(value) <= room) return value;
    const letters = Array.from(value);
    while (letters.length > 1 && widthOf(`${letters.join('').trimEnd()}…`) > room)
      letters.pop();
    return `${letters.join('').trimEnd()}…`;
  };
  return (y, { left, right }) => {
    const whole = paper.right - paper.left;
    const rightSet = right.map((entry) => setEntry(entry, whole / 2));
    const rightWidth = widthOf(rightSet);
    const others = left.slice(1).map((entry) => setEntry(entry, whole / 4));
    const room = whole - rightWidth - widthOf(others) - 2 * entryGap;
    const first = left.slice(0, 1).map((entry) => setEntry(entry, room));
    return [
      ...placeEntries([...first, ...others], paper.left, y),
      ...placeEntries(rightSet, paper.right - rightWidth, y),
    ];
  };
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
