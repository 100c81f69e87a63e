import type {
  BeamPicture,
  FigureSpec,
  Label,
  PictureLoad,
  PictureReaction,
} from '../../src/figure/index.ts';
import { given, name } from '../../src/equation/index.ts';
import type { Expression } from '../../src/equation/index.ts';
import { quantity, unitOf } from '../../src/units/index.ts';
import type { Unit } from '../../src/units/index.ts';

/** Units as labels write them: `kip`, `kip/ft`, `kip ft`. */
export function unit(text: string): Unit {
  const [over = '', under] = text.split('/');
  return unitOf([
    ...over.split(' ').map((symbol) => ({ symbol, power: 1 })),
    ...(under === undefined ? [] : [{ symbol: under, power: -1 }]),
  ]);
}

/** A figure as given: `value('8.4 kip')`. */
export function value(text: string): Expression {
  const [, number = '', units = ''] = /^(\S+) (.+)$/.exec(text) ?? [];
  const of = unit(units);
  return given({
    ...quantity(Number(number), of),
    text: number,
    unit: of,
    compound: false,
  });
}

/** `figure('8.4 kip')` is a label that shows a value. */
export function figure(text: string): Label {
  return { kind: 'expression', expression: value(text) };
}

/** A bare number. */
export function number(text: string): Label {
  return { kind: 'expression', expression: plainNumber(Number(text), text) };
}

/** `symbol('R', 'A')` is a label that shows a symbol. */
export function symbol(letter: string, subscript?: string): Label {
  return { kind: 'expression', expression: named(letter, subscript) };
}

/** `equal('P', '1', '8.4 kip')` is a label that shows P₁ = 8.4 kip. */
export function equal(letter: string, subscript: string, text: string): Label {
  const left = named(letter, subscript === '' ? undefined : subscript);
  return { kind: 'line', line: { left, chain: [{ sign: '=', of: value(text) }] } };
}

/** Plain words. */
export function words(text: string): Label {
  return { kind: 'text', text };
}

function plainNumber(count: number, text: string): Expression {
  const of = unitOf([]);
  return given({ ...quantity(count, of), text, unit: of, compound: false });
}

function named(letter: string, subscript?: string): Expression {
  return name({
    letter,
    meaning: letter,
    ...(subscript === undefined ? {} : { subscript }),
  });
}

/** A beam from 0 to `end`, with nothing on it but what is asked for. */
export function beam(end: number, parts: Partial<BeamPicture> = {}): BeamPicture {
  return {
    start: 0,
    end,
    points: [],
    supports: [],
    hinges: [],
    loads: [],
    reactions: [],
    dimensions: [],
    ...parts,
  };
}

/** A figure of a member as loaded. */
export function member(picture: BeamPicture): FigureSpec {
  return { kind: 'member', picture, alternate: 'A beam.' };
}

/** A downward point load; its label shows its size in kip. */
export function down(x: number, kips: number, mark: string = ''): PictureLoad {
  return push(x, 270, kips, mark);
}

/** A point load in any direction. */
export function push(
  x: number,
  degrees: number,
  kips: number,
  mark: string = '',
): PictureLoad {
  const text = `${kips} kip`;
  const label = mark === '' ? figure(text) : equal('P', mark, text);
  return { kind: 'force', x, degrees, size: kips, label };
}

/** A uniform downward load. */
export function uniform(from: number, to: number, size: number): PictureLoad {
  const label = equal('w', '', `${size} kip/ft`);
  return {
    kind: 'distributed',
    from,
    to,
    degrees: 270,
    sizes: [size, size],
    labels: [label, undefined],
  };
}

/** A load that varies between its ends; labels at the ends that are not 0. */
export function varying(
  from: number,
  to: number,
  sizes: readonly [number, number],
): PictureLoad {
  const label = (size: number): Label | undefined =>
    size === 0 ? undefined : figure(`${Math.abs(size)} kip/ft`);
  return {
    kind: 'distributed',
    from,
    to,
    degrees: 270,
    sizes,
    labels: [label(sizes[0]), label(sizes[1])],
  };
}

/** A couple; its label shows its size in kip ft. */
export function couple(
  x: number,
  turn: 'clockwise' | 'counterclockwise',
  size: number,
): PictureLoad {
  return { kind: 'couple', x, turn, size, label: figure(`${size} kip ft`) };
}

/** An unknown reaction force. */
export function unknown(x: number, degrees: number, mark: string): PictureReaction {
  return { kind: 'force', x, degrees, label: symbol(mark[0] ?? 'R', mark.slice(1)) };
}

/** A chain of dimensions between stations, each labelled with its length in feet. */
export function chain(
  ...stations: readonly number[]
): BeamPicture['dimensions'][number] {
  return stations.slice(1).map((to, index) => {
    const from = stations[index] ?? 0;
    const length = Number((to - from).toFixed(2));
    return { from, to, label: figure(`${length} ft`) };
  });
}
