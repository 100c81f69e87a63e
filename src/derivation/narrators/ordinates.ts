import {
  functionOf,
  minus,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
} from '../../equation/index.ts';
import type { Load, Resultant } from '../../statics/index.ts';
import { loadOf, type CaseContext } from '../case-context.ts';
import { sizeFigure } from '../load-figures.ts';
import { tidy } from '../printing.ts';
import { crossingSymbol } from '../symbols.ts';

type DistributedLoad = Extract<Load, { kind: 'distributed' }>;

/** An intensity that the file does not give, worked out for a shape that ends there. */
export interface Ordinate {
  /** Its station, m. */
  readonly x: number;
  readonly what: 'at-cut' | 'zero';
  readonly statement: Statement;
}

/** A varying load as a straight line along one direction; absent where it turns its direction on the way. */
interface Line {
  readonly load: DistributedLoad;
  /** Signed intensities at its two ends, N/m. */
  readonly start: number;
  readonly end: number;
}

const isNothing = (size: number, beside: number): boolean =>
  Math.abs(size) <= 1e-9 * Math.abs(beside);

function lineOf(load: Load): Line | undefined {
  if (load.kind !== 'distributed') return undefined;
  const { x1, y1, x2, y2 } = load;
  const [size1, size2] = [Math.hypot(x1, y1), Math.hypot(x2, y2)];
  if (Math.abs(x1 * y2 - x2 * y1) > 1e-9 * size1 * size2) return undefined;
  const along = size1 >= size2 ? [x1 / size1, y1 / size1] : [x2 / size2, y2 / size2];
  const dot = (x: number, y: number): number =>
    x * (along[0] ?? 0) + y * (along[1] ?? 0);
  return { load, start: dot(x1, y1), end: dot(x2, y2) };
}

function at({ load, start, end }: Line, x: number): number {
  return start + ((end - start) * (x - load.from)) / (load.to - load.from);
}

/** The intensities of a varying load at the ends of a shape that are no ends of the load: where a stretch is cut, where it passes through 0. */
export function ordinatesOf(
  context: CaseContext,
  id: string,
  { from, to }: Resultant,
): readonly Ordinate[] {
  const line = lineOf(loadOf(context.structure, id));
  if (line === undefined || isNothing(line.end - line.start, line.start)) return [];
  const { load } = line;
  const margin = load.to - load.from;
  return [from, to].flatMap((x): readonly Ordinate[] => {
    if (isNothing(x - load.from, margin) || isNothing(x - load.to, margin)) return [];
    const isZero = isNothing(
      at(line, x),
      Math.max(Math.abs(line.start), Math.abs(line.end)),
    );
    return [isZero ? zeroOf(context, line, x) : cutOf(context, line, x)];
  });
}

function intensity(context: CaseContext, { load }: Line, size: number): Expression {
  return sizeFigure(context, load.id, 'force-per-length', Math.abs(size));
}

/** `w(10 ft) = 0.3 kip/ft + (0.9 kip/ft − 0.3 kip/ft) (5 ft) / (15 ft)`, or one product where the line begins or ends at nothing. */
function cutOf(context: CaseContext, line: Line, x: number): Ordinate {
  const { load, start, end } = line;
  const length = (si: number): Expression => tidy(context.printing, 'length', si);
  const base = length(load.to - load.from);
  const share = (of: Expression, reach: number): Expression =>
    quotient(product(of, length(reach)), base);
  const signed = (size: number): Expression =>
    size < 0
      ? sum(minus(intensity(context, line, size)))
      : intensity(context, line, size);
  const worked =
    start === 0
      ? share(signed(end), x - load.from)
      : end === 0
        ? share(signed(start), load.to - x)
        : sum(
            signed(start),
            share(
              sum(signed(end), {
                sign: start > 0 ? -1 : 1,
                of: intensity(context, line, start),
              }),
              x - load.from,
            ),
          );
  const found = at(line, x);
  const left = functionOf(context.symbols.intensity(load.id), length(x));
  return {
    x,
    what: 'at-cut',
    statement: {
      lines: [
        {
          left,
          chain: [
            { sign: '=', of: worked },
            { sign: '=', of: signed(found) },
          ],
        },
      ],
    },
  };
}

/** `x_0 = 4 ft + 0.4 kip/ft (20 ft) / (0.4 kip/ft + 0.8 kip/ft)`: where the line passes through 0. */
function zeroOf(context: CaseContext, line: Line, x: number): Ordinate {
  const { load, start, end } = line;
  const length = (si: number): Expression => tidy(context.printing, 'length', si);
  const [first, second] = [
    intensity(context, line, start),
    intensity(context, line, end),
  ];
  const reach = quotient(
    product(first, length(load.to - load.from)),
    sum(first, second),
  );
  const worked = load.from === 0 ? reach : sum(length(load.from), reach);
  return {
    x,
    what: 'zero',
    statement: {
      lines: [
        {
          left: name(crossingSymbol),
          chain: [
            { sign: '=', of: worked },
            { sign: '=', of: length(x) },
          ],
        },
      ],
    },
  };
}

/** The height of a shape: its intensity, or of the triangle over a rectangle the difference of the two ends. */
export function heightOf(
  context: CaseContext,
  id: string,
  { shape, from, to, start, end }: Resultant,
): Expression {
  const height = (size: number): Expression =>
    sizeFigure(context, id, 'force-per-length', size);
  const most = Math.max(start, end);
  const line = lineOf(loadOf(context.structure, id));
  if (shape === 'rectangle' || line === undefined) return height(most);
  const [least, greatest] = [Math.abs(at(line, from)), Math.abs(at(line, to))].sort(
    (a, b) => a - b,
  );
  if (least === undefined || greatest === undefined || isNothing(least, greatest))
    return height(most);
  return sum(height(greatest), minus(height(least)));
}
