import type { Colour, Stroke } from '../../drawing/index.ts';
import { formatNumber, formatNumbers } from '../format-number.ts';

/**
 * A page's content under construction: operators in the page's own coordinates (points, origin at
 * the bottom left, y UP). It remembers the colours, lines and font in force and says only what changes.
 */
export interface ContentStream {
  /** Adds operators as they are. */
  readonly add: (operators: string) => void;
  readonly fillWith: (colour: Colour) => void;
  readonly strokeWith: (stroke: Stroke) => void;
  /** Chooses a font by its name in the resources, at a size in points. */
  readonly writeIn: (font: string, size: number) => void;
  /** Saves the graphics state; what is changed is forgotten at `restore`. */
  readonly save: () => void;
  readonly restore: () => void;
  readonly bytes: () => Uint8Array;
}

/** The operators last written for each setting. */
interface GraphicsState {
  readonly fill: string;
  readonly stroke: string;
  readonly width: string;
  readonly dash: string;
  readonly cap: string;
  readonly join: string;
  readonly font: string;
}

/** What holds at the start of a page (ISO 32000-1, 8.4.1): black ink, 1 pt lines, no dashes, no font. */
const initial: GraphicsState = {
  fill: '0 0 0 rg',
  stroke: '0 0 0 RG',
  width: '1 w',
  dash: '[] 0 d',
  cap: '0 J',
  join: '0 j',
  font: '',
};

const caps = { butt: '0 J', round: '1 J', square: '2 J' } as const;
const joins = { miter: '0 j', round: '1 j', bevel: '2 j' } as const;

/** An empty page. */
export function openContent(): ContentStream {
  const lines: string[] = [];
  const saved: GraphicsState[] = [];
  let now = initial;
  const set = (key: keyof GraphicsState, operator: string): void => {
    if (now[key] === operator) return;
    lines.push(operator);
    now = { ...now, [key]: operator };
  };
  return {
    add: (operators) => lines.push(operators),
    fillWith: (colour) => set('fill', `${formatNumbers(...colour)} rg`),
    strokeWith: ({ colour, width, dash = [], cap = 'butt', join = 'miter' }) => {
      set('stroke', `${formatNumbers(...colour)} RG`);
      set('width', `${formatNumber(width)} w`);
      set('dash', `[${formatNumbers(...dash)}] 0 d`);
      set('cap', caps[cap]);
      set('join', joins[join]);
    },
    writeIn: (font, size) => set('font', `/${font} ${formatNumber(size)} Tf`),
    save: () => {
      lines.push('q');
      saved.push(now);
    },
    restore: () => {
      lines.push('Q');
      now = saved.pop() ?? initial;
    },
    bytes: () => asciiBytes(lines.join('\n')),
  };
}

function asciiBytes(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
