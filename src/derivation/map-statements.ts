import type { Statement } from '../equation/index.ts';
import type { Step } from './steps.ts';

/** A step with every statement in it changed, wherever it stands in the facts; all else stays as it is. */
export function mapStatements(
  step: Step,
  change: (statement: Statement) => Statement,
): Step {
  // Drawings carry labels of their own, which are no worked lines.
  return step.kind === 'figure' ? step : (mapValue(step, change) as Step);
}

/** Every statement in a step, in the order of its facts. */
export function statementsOf(step: Step): readonly Statement[] {
  const found: Statement[] = [];
  mapStatements(step, (statement) => {
    found.push(statement);
    return statement;
  });
  return found;
}

function mapValue(of: unknown, change: (statement: Statement) => Statement): unknown {
  if (Array.isArray(of)) return of.map((item: unknown) => mapValue(item, change));
  if (typeof of !== 'object' || of === null) return of;
  if (isStatement(of)) return change(of);
  return Object.fromEntries(
    Object.entries(of).map(([key, item]) => [key, mapValue(item, change)]),
  );
}

function isStatement(of: object): of is Statement {
  return (
    'lines' in of &&
    Array.isArray(of.lines) &&
    of.lines.every(
      (line: unknown) => typeof line === 'object' && line !== null && 'chain' in line,
    )
  );
}
