import type { Span } from '../../diagnostics/index.ts';
import { combinationsFor } from '../../standards/index.ts';
import type { LoadsDefinition } from '../definitions.ts';
import type { Reading } from '../reading.ts';

/**
 * Marks of all combinations that loads.yaml asks for. The sets are worked out here for once, so
 * that a fault of a request (a mark taken, an edition unknown) is reported with its place.
 */
export function workedMarks(
  definition: LoadsDefinition,
  standards: readonly string[],
  reading: Reading,
): readonly string[] {
  // After an error the cases are not what the user meant, and faults of the sets would only echo it.
  if (reading.hasFailed()) return [];
  const list = combinationsFor({ ...definition, standards });
  for (const problem of list.problems)
    reading.report({
      code:
        problem.kind === 'mark-taken' ? 'combination-mark-taken' : 'combination-set',
      message: problem.message,
      span: spanOf(problem.subject, definition, reading),
    });
  return list.combinations.map((combination) => combination.mark);
}

// Of two requests of one name the later is the one too many.
function spanOf(subject: string, definition: LoadsDefinition, reading: Reading): Span {
  const request = definition.combinations.findLast(
    (one) => (one.kind === 'custom' ? one.mark : one.name) === subject,
  );
  return request?.span ?? { file: reading.file, start: 0, end: 0 };
}
