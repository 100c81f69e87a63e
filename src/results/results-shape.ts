import { entryShape } from './entry-shape.ts';
import { figureShapes, type FigureShapes } from './figure-shapes.ts';
import { list, number, object, orNull, text, whole } from './plain-shapes.ts';
import { isObject, type Shape } from './shape.ts';

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
      results: { kind: 'record', of: entryShape(system) },
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
