import { figureShapes, type FigureShapes } from './figure-shapes.ts';
import { list, object, orNull, text } from './plain-shapes.ts';
import { isObject, type Shape } from './shape.ts';

/** An entry with a single state, or one that says that it is a range. */
export function entryShape(system: 'us' | 'si'): Shape {
  const figures = figureShapes(system);
  const [state, range] = [stateShape(figures), rangeShape(figures)];
  return {
    kind: 'either',
    choose: (value) => (isObject(value) && value.kind === 'range' ? range : state),
  };
}

function stateShape({ of, extremes }: FigureShapes): Shape {
  const force = of('force');
  const moment = of('moment');
  return object(
    {
      reactions: list(
        object({
          point: text,
          x: orNull(force),
          y: orNull(force),
          moment: orNull(moment),
        }),
      ),
      shear: extremes('force'),
      moment: extremes('moment'),
    },
    {
      deflection: extremes('deflection'),
      stations: list(
        object({
          x: of('length'),
          shear: force,
          moment,
          slope: orNull(of('angle')),
          deflection: orNull(of('deflection')),
        }),
      ),
    },
  );
}

/** Keys with `_max` and `_min` after them, all of one shape. */
function bothEnds(key: string, of: Shape): Readonly<Record<string, Shape>> {
  return { [`${key}_max`]: of, [`${key}_min`]: of };
}

function rangeShape({ of, ends, arranged }: FigureShapes): Shape {
  return object(
    {
      kind: { kind: 'text', among: ['range'] },
      reactions: list(
        object({
          point: text,
          x: orNull(ends('force')),
          y: orNull(ends('force')),
          moment: orNull(ends('moment')),
        }),
      ),
      shear: arranged('force'),
      moment: arranged('moment'),
    },
    {
      deflection: arranged('deflection'),
      stations: list(
        object({
          x: of('length'),
          ...bothEnds('shear', of('force')),
          ...bothEnds('moment', of('moment')),
          ...bothEnds('slope', orNull(of('angle'))),
          ...bothEnds('deflection', orNull(of('deflection'))),
        }),
      ),
    },
  );
}
