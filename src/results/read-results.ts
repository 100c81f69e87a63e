import type { ProjectErrors, Results } from './results.ts';
import { projectErrorsShape, resultsShape } from './results-shape.ts';
import { isObject, misfitsOf, type Misfit, type Shape } from './shape.ts';

/** What came of reading a results.json. */
export type ResultsReading =
  | { readonly kind: 'results'; readonly results: Results }
  /** The file says that its project could not be read. */
  | { readonly kind: 'project-errors'; readonly errors: ProjectErrors }
  /** The text is no JSON: the parser's own words. */
  | { readonly kind: 'not-json'; readonly message: string }
  /** It is JSON, but not of format 1: every place that departs from it. */
  | { readonly kind: 'misshapen'; readonly misfits: readonly Misfit[] };

/**
 * Reads a results.json back and checks it against format 1: every field, every unit, every number
 * finite. Keys that format 1 does not know are passed over.
 */
export function readResults(text: string): ResultsReading {
  const parsed = parseJson(text);
  if (!parsed.isJson) return { kind: 'not-json', message: parsed.message };
  const { value } = parsed;
  if (isObject(value) && 'errors' in value) {
    return fitted(value, projectErrorsShape, () => ({
      kind: 'project-errors',
      // The shape has just been checked, key by key.
      errors: value as unknown as ProjectErrors,
    }));
  }
  return fitted(value, resultsShape(systemOf(value)), () => ({
    kind: 'results',
    results: value as Results,
  }));
}

function fitted(
  value: unknown,
  shape: Shape,
  reading: () => ResultsReading,
): ResultsReading {
  const misfits = misfitsOf(value, shape);
  return misfits.length === 0 ? reading() : { kind: 'misshapen', misfits };
}

// Units that are neither are a misfit of their own; which units the rest is then held against matters little.
function systemOf(value: unknown): 'us' | 'si' {
  const project = isObject(value) ? value.project : undefined;
  return isObject(project) && project.units === 'si' ? 'si' : 'us';
}

type Parsed =
  | { readonly isJson: true; readonly value: unknown }
  | { readonly isJson: false; readonly message: string };

function parseJson(text: string): Parsed {
  try {
    return { isJson: true, value: JSON.parse(text) as unknown };
  } catch (error) {
    return {
      isJson: false,
      message: error instanceof Error ? error.message : 'not JSON',
    };
  }
}
