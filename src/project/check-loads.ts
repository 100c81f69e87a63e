import { nearest, type Span } from '../diagnostics/index.ts';
import { combinationsFor } from '../standards/index.ts';
import type {
  AreaLoad,
  CombinationRequest,
  LoadCase,
  LoadsDefinition,
} from './definitions.ts';
import type { CombinationEntry, LoadsFile } from './loads-file.ts';
import type { Reading } from './reading.ts';
import { recordOf, type Named } from './shape/map-of.ts';
import type { Placed } from './shape/shape.ts';

/** What loads.yaml comes to: its definition, and the marks of all its combinations. */
export interface CheckedLoads {
  readonly definition: LoadsDefinition;
  /** Marks of the combinations that the project will have, as far as they could be worked out. */
  readonly combinations: readonly string[];
}

/** What stands for loads.yaml where there is none: the cases that the loads name, no areas, no combinations. */
export function withoutLoads(named: readonly LoadCase[]): CheckedLoads {
  const definition = {
    given: false,
    cases: named,
    areas: recordOf<AreaLoad>([]),
    combinations: [],
    alternatives: [],
  };
  return { definition, combinations: [] };
}

/** Checks loads.yaml: every case that is named must be listed, every mark must tell its sum from others. */
export function checkLoads(
  file: Partial<LoadsFile>,
  context: {
    readonly named: readonly LoadCase[];
    readonly standards: readonly string[];
  },
  reading: Reading,
): CheckedLoads {
  const listed = (file.cases ?? []).map((entry) => readCase(entry));
  // A file that lists no cases leaves them to the loads, like no file at all.
  const cases = listed.length === 0 ? context.named : listed;
  const areas = (file.areas ?? []).flatMap((entry) => {
    if (entry.value === undefined) return [];
    for (const { name } of entry.value.byCase) reportStranger(name, cases, reading);
    const byCase = entry.value.byCase.flatMap(({ name, value }) =>
      value === undefined ? [] : [[name.value, value] as const],
    );
    const area: AreaLoad = {
      name: entry.name.value,
      byCase: recordOf(byCase),
      ...(entry.value.source === undefined ? {} : { source: entry.value.source }),
    };
    return [[area.name, area] as const];
  });
  for (const mark of (file.alternatives ?? []).flat())
    reportStranger(mark, cases, reading);
  const requests = (file.combinations ?? []).map((entry) =>
    readRequest(entry, cases, reading),
  );
  const definition: LoadsDefinition = {
    given: true,
    cases,
    areas: recordOf(areas),
    combinations: requests,
    alternatives: (file.alternatives ?? []).map((group) =>
      group.map((mark) => mark.value),
    ),
  };
  return {
    definition,
    combinations: workedMarks(definition, context.standards, reading),
  };
}

function readCase({
  name,
  value,
}: Named<NonNullable<LoadsFile['cases']>[number]['value']>): LoadCase {
  const { pattern, ...rest } = value ?? { pattern: { value: false } };
  return { ...rest, mark: name.value, pattern: pattern.value };
}

function readRequest(
  entry: Placed<CombinationEntry>,
  cases: readonly LoadCase[],
  reading: Reading,
): CombinationRequest {
  const { value, span } = entry;
  const numbers = (named: readonly Named<number>[]): Readonly<Record<string, number>> =>
    recordOf(
      named.flatMap(({ name, value: number }) =>
        number === undefined ? [] : [[name.value, number] as const],
      ),
    );
  if (value.kind === 'custom') {
    for (const { name } of value.factors) reportStranger(name, cases, reading);
    return {
      kind: 'custom',
      mark: value.mark,
      factors: numbers(value.factors),
      for: value.for.value,
      span,
    };
  }
  return {
    kind: 'named-set',
    name: value.set,
    span,
    ...(value.expression === undefined ? {} : { expression: value.expression }),
    ...(value.national === undefined ? {} : { national: numbers(value.national) }),
  };
}

/** Reports a case that loads.yaml does not list. */
function reportStranger(
  mark: Placed<string>,
  cases: readonly LoadCase[],
  reading: Reading,
): void {
  if (cases.some((one) => one.mark === mark.value)) return;
  const near = nearest(
    mark.value,
    cases.map((one) => one.mark),
  );
  reading.report({
    code: 'unknown-case',
    message: `no case \`${mark.value}\` is listed under \`cases\``,
    span: mark.span,
    hints: [
      near === undefined
        ? 'add it to `cases`'
        : `write \`${near}\`, or add it to \`cases\``,
    ],
  });
}

// The sets are worked out once here, so that a fault of a request has its place in the file.
function workedMarks(
  definition: LoadsDefinition,
  standards: readonly string[],
  reading: Reading,
): readonly string[] {
  // After an error the cases are not what the user meant, and faults of the sets would only echo it.
  if (reading.hasFailed()) return [];
  const list = combinationsFor({ ...definition, standards });
  for (const problem of list.problems) {
    if (problem.kind === 'unknown-case') continue;
    reading.report({
      code:
        problem.kind === 'mark-taken' ? 'combination-mark-taken' : 'combination-set',
      message: problem.message,
      span: spanOf(problem.subject, definition, reading),
    });
  }
  return list.combinations.map((combination) => combination.mark);
}

function spanOf(subject: string, definition: LoadsDefinition, reading: Reading): Span {
  const named = definition.combinations.findLast(
    (request) => (request.kind === 'custom' ? request.mark : request.name) === subject,
  );
  return named?.span ?? { file: reading.file, start: 0, end: 0 };
}
