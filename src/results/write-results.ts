import type { ProjectErrors, Results } from './results.ts';

/**
 * results.json: the value as text, two blanks a step, a line break at the end. Quantities stand on
 * one line each, so that a change of one figure is a change of one line.
 */
export function writeResults(results: Results | ProjectErrors): string {
  const text = JSON.stringify(results, null, 2);
  return `${joinFigures(text)}\n`;
}

// No raw line break occurs within a JSON string, so that these patterns see structure only.
function joinFigures(text: string): string {
  const figure = /\{\n\s+"value": (\S+),\n\s+"unit": ("[^"\n]*")\n\s+\}/g;
  return text.replace(figure, '{ "value": $1, "unit": $2 }');
}
