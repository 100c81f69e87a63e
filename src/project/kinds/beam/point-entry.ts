import type { GivenQuantity } from '../../../units/index.ts';
import { quantityOf } from '../../shape/quantity.ts';
import type { Shape } from '../../shape/shape.ts';
import { nameOf } from '../../shape/text.ts';

/** A point's station as written: from the axis' origin, or (`+4 ft`) from the point before. */
export interface PointEntry {
  readonly given: GivenQuantity;
  readonly relative: boolean;
}

/** A point's name; grid lines such as `2`, `A.5` or `B'` are names as well. */
export const pointName: Shape<string> = nameOf(
  "a point's name",
  /^[^\s,:;+\-*&#"`()[\]{}][^\s,:;+*&#"`()[\]{}]{0,19}$/u,
  'names of points are short, hold no space, comma, colon or +, and do not begin with a dash',
);

const station = quantityOf('length');

/** A station, or a distance from the point before. */
export const pointEntry: Shape<PointEntry> = {
  expects: 'a station, or + and the distance from the point before',
  schema: station.schema,
  read: (tree, reading) => {
    const plus = tree.kind === 'text' ? (/^\+\s*/.exec(tree.text)?.[0].length ?? 0) : 0;
    const bare =
      tree.kind === 'text' && plus > 0
        ? {
            ...tree,
            text: tree.text.slice(plus),
            span: tree.quoted
              ? tree.span
              : { ...tree.span, start: tree.span.start + plus },
          }
        : tree;
    const given = station.read(bare, reading);
    return given === undefined ? undefined : { given, relative: plus > 0 };
  },
};
