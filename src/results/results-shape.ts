import { displayUnit, unitText, type Display } from '../units/index.ts';
import { isObject, type Shape } from './shape.ts';

const text: Shape = { kind: 'text' };
const whole: Shape = { kind: 'number', whole: true };
const number: Shape = { kind: 'number' };
const list = (of: Shape): Shape => ({ kind: 'list', of });
const nothing: Shape = { kind: 'exactly', value: null };
const orNull = (of: Shape): Shape => ({
  kind: 'either',
  choose: (value) => (value === null ? nothing : of),
});
const object = (
  required: Readonly<Record<string, Shape>>,
  optional: Readonly<Record<string, Shape>> = {},
): Shape => ({ kind: 'object', required, optional });

/** The shape of what stands for a project that cannot be read. */
export const projectErrorsShape: Shape = object({
  format: { kind: 'exactly', value: 1 },
  errors: list(
    object({ code: text, message: text }, { file: text, line: whole, column: whole }),
  ),
});

/** The shape of results.json, format 1, in one system of units: each figure has the unit of its place. */
export function resultsShape(system: 'us' | 'si'): Shape {
  return object({
    format: { kind: 'exactly', value: 1 },
    project: object({
      number: orNull(text),
      title: text,
      revision: orNull(text),
      units: { kind: 'text', among: ['us', 'si'] },
    }),
    members: list(memberShape(system)),
  });
}

function memberShape(system: 'us' | 'si'): Shape {
  const figures = figureShapes(system);
  const counts = object({
    unknowns: whole,
    equations: whole,
    degree: whole,
    stable: { kind: 'boolean' },
  });
  const beam = object(
    {
      mark: text,
      kind: { kind: 'text', among: ['beam'] },
      statics: counts,
      results: { kind: 'record', of: entryShape(figures) },
      ...envelopeShapes(figures),
      checks: list(checkShape()),
      closure: list(closureShape()),
    },
    { title: text, sheet: whole },
  );
  const unsolved = object(
    {
      mark: text,
      kind: text,
      error: object({ code: text, message: text }, { file: text, line: whole }),
    },
    { title: text, sheet: whole, statics: counts },
  );
  return {
    kind: 'either',
    choose: (value) => (isObject(value) && 'error' in value ? unsolved : beam),
  };
}

interface FigureShapes {
  readonly of: (what: Display) => Shape;
  readonly extremes: (what: Display) => Shape;
  readonly governing: (what: Display) => Shape;
}

function figureShapes(system: 'us' | 'si'): FigureShapes {
  const fields = (what: Display): Readonly<Record<string, Shape>> => ({
    value: number,
    unit: { kind: 'text', among: [unitText(displayUnit(system, what), 'data')] },
  });
  const placed = (what: Display, more: Readonly<Record<string, Shape>>): Shape => {
    const extreme = object({ ...fields(what), at: object(fields('length')), ...more });
    return object({ max: extreme, min: extreme });
  };
  return {
    of: (what) => object(fields(what)),
    extremes: (what) => placed(what, {}),
    governing: (what) => placed(what, { result: text }),
  };
}

function entryShape({ of, extremes }: FigureShapes): Shape {
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

function envelopeShapes(figures: FigureShapes): Readonly<Record<string, Shape>> {
  const envelope = object({
    shear: figures.governing('force'),
    moment: figures.governing('moment'),
  });
  const envelopes = object({ strength: orNull(envelope), service: orNull(envelope) });
  return { envelope, envelopes };
}

// A limit may be on anything, a closure on forces or moments: their units are their own.
const anyFigure = object({ value: number, unit: text });

function checkShape(): Shape {
  return object(
    {
      name: text,
      clause: text,
      combination: text,
      demand: anyFigure,
      capacity: anyFigure,
      ratio: number,
      passes: { kind: 'boolean' },
    },
    { span: text, at: anyFigure },
  );
}

function closureShape(): Shape {
  return object({
    result: text,
    equation: text,
    residual: anyFigure,
    scale: anyFigure,
  });
}
