import { displayUnit, unitText, type Display } from '../units/index.ts';
import { list, number, object, text, whole } from './plain-shapes.ts';
import type { Shape } from './shape.ts';

/** Shapes of figures in one system of units: each figure has the unit of its place. */
export interface FigureShapes {
  readonly of: (what: Display) => Shape;
  readonly extremes: (what: Display) => Shape;
  readonly governing: (what: Display) => Shape;
  /** Greatest and least, each with its arrangement: without a station, and with one. */
  readonly ends: (what: Display) => Shape;
  readonly arranged: (what: Display) => Shape;
}

/** The shapes of figures in a system of units. */
export function figureShapes(system: 'us' | 'si'): FigureShapes {
  const fields = (what: Display): Readonly<Record<string, Shape>> => ({
    value: number,
    unit: { kind: 'text', among: [unitText(displayUnit(system, what), 'data')] },
  });
  const arrangement = arrangementShape(object(fields('length')));
  const placed = (
    what: Display,
    more: Readonly<Record<string, Shape>>,
    maybe: Readonly<Record<string, Shape>> = {},
  ): Shape => {
    const at = object(fields('length'));
    const extreme = object({ ...fields(what), at, ...more }, maybe);
    return object({ max: extreme, min: extreme });
  };
  return {
    of: (what) => object(fields(what)),
    extremes: (what) => placed(what, {}),
    governing: (what) => placed(what, { result: text }, { arrangement }),
    ends: (what) => {
      const end = object({ ...fields(what), arrangement });
      return object({ max: end, min: end });
    },
    arranged: (what) => placed(what, { arrangement }),
  };
}

const spanOfCase = object({ case: text, from: text, to: text });

function arrangementShape(length: Shape): Shape {
  return object(
    { spans: list(spanOfCase) },
    {
      carried: list(
        object({
          case: text,
          member: text,
          point: text,
          component: { kind: 'text', among: ['x', 'y', 'moment'] },
          taken: text,
        }),
      ),
      trains: list(
        object({
          train: text,
          direction: { kind: 'text', among: ['right', 'left'] },
          axles: list(object({ axle: whole, at: length })),
          lane: list(object({ from: length, to: length })),
        }),
      ),
    },
  );
}
