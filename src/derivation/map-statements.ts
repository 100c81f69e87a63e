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
  if (step.kind !== 'figure') visit(step, found);
  return found;
}

function visit(of: unknown, found: Statement[]): void {
  if (Array.isArray(of)) {
    for (const item of of) visit(item, found);
  } else if (typeof of === 'object' && of !== null && !isLeaf(of)) {
    if (isStatement(of)) found.push(of);
    else for (const item of Object.values(of)) visit(item, found);
  }
}

function mapValue(of: unknown, change: (statement: Statement) => Statement): unknown {
  if (Array.isArray(of)) {
    const mapped = of.map((item: unknown) => mapValue(item, change));
    return mapped.every((item, index) => item === of[index]) ? of : mapped;
  }
  if (typeof of !== 'object' || of === null || isLeaf(of)) return of;
  if (isStatement(of)) return change(of);
  const entries = Object.entries(of);
  const mapped = entries.map(([key, item]) => [key, mapValue(item, change)] as const);
  return mapped.every(([, item], index) => item === entries[index]?.[1])
    ? of
    : Object.fromEntries(mapped);
}

/** A figure or a symbol: nothing stands inside it. */
function isLeaf(of: object): boolean {
  return 'quantity' in of || 'letter' in of;
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
