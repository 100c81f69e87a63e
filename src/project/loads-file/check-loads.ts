import { nearest } from '../../diagnostics/index.ts';
import type {
  AreaLoad,
  CombinationRequest,
  DefinitionFile,
  LoadCase,
  LoadsDefinition,
} from '../definitions.ts';
import type { OpenFolder } from '../open-folder.ts';
import type { Reading } from '../reading.ts';
import { recordOf, valuesByName, type Named } from '../shape/map-of.ts';
import { present } from '../shape/present.ts';
import type { Placed } from '../shape/shape.ts';
import type { CombinationEntry } from './combination-entry.ts';
import type { AreaEntry, CaseEntry, LoadsFile } from './loads-file.ts';
import { namedCases } from './named-cases.ts';
import { workedMarks } from './worked-marks.ts';

/** What loads.yaml comes to: its definition, and the marks of all its combinations. */
export interface CheckedLoads {
  readonly definition: LoadsDefinition;
  /** Marks of the combinations that the project will have, as far as they could be worked out. */
  readonly combinations: readonly string[];
}

/**
 * The project's cases, area loads and combinations. Without loads.yaml the cases are those that
 * the loads name. Undefined where the file is there and cannot be parsed.
 */
export function readLoads(
  file: DefinitionFile | undefined,
  open: OpenFolder,
): CheckedLoads | undefined {
  const named = namedCases(open.members.flatMap((member) => member.beam ?? []));
  if (file === undefined) {
    const nothing = {
      areas: recordOf<AreaLoad>([]),
      combinations: [],
      alternatives: [],
    };
    return { definition: { given: false, cases: named, ...nothing }, combinations: [] };
  }
  if (open.loads === undefined) return undefined;
  const { parts, reading } = open.loads;
  const definition = defineLoads(parts, named, reading);
  const standards = open.project?.parts.criteria?.standards ?? [];
  return { definition, combinations: workedMarks(definition, standards, reading) };
}

function defineLoads(
  file: Partial<LoadsFile>,
  named: readonly LoadCase[],
  reading: Reading,
): LoadsDefinition {
  const { cases: listed = [], areas = [], combinations = [], alternatives = [] } = file;
  // A file that lists no cases leaves them to the loads, like no file at all.
  const cases = listed.length === 0 ? named : listed.map(defineCase);
  for (const mark of alternatives.flat()) remarkOnStranger(mark, cases, reading);
  return {
    given: true,
    cases,
    areas: recordOf(areas.flatMap((area) => defineArea(area, cases, reading))),
    combinations: combinations.map((entry) => defineRequest(entry, cases, reading)),
    alternatives: alternatives.map((group) => group.map((mark) => mark.value)),
  };
}

function defineCase({ name, value }: Named<CaseEntry>): LoadCase {
  return { ...value, mark: name.value, pattern: value?.pattern.value ?? false };
}

function defineArea(
  { name, value }: Named<AreaEntry>,
  cases: readonly LoadCase[],
  reading: Reading,
): readonly (readonly [string, AreaLoad])[] {
  if (value === undefined) return [];
  for (const entry of value.byCase) reportStranger(entry.name, cases, reading);
  const byCase = valuesByName(value.byCase);
  return [
    [name.value, present<AreaLoad>({ name: name.value, source: value.source, byCase })],
  ];
}

function defineRequest(
  { value, span }: Placed<CombinationEntry>,
  cases: readonly LoadCase[],
  reading: Reading,
): CombinationRequest {
  if (value.kind === 'set') {
    const { set: name, expression } = value;
    const national = value.national && valuesByName(value.national);
    return present<CombinationRequest>({
      kind: 'named-set',
      name,
      expression,
      national,
      span,
    });
  }
  for (const { name } of value.factors) reportStranger(name, cases, reading);
  const factors = valuesByName(value.factors);
  return { kind: 'custom', mark: value.mark, factors, for: value.for.value, span };
}

/** Reports a case that loads.yaml does not list. */
function reportStranger(
  mark: Placed<string>,
  cases: readonly LoadCase[],
  reading: Reading,
): void {
  const marks = cases.map((one) => one.mark);
  if (marks.includes(mark.value)) return;
  const near = nearest(mark.value, marks);
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

/** A group of alternatives may name a case that comes later; until then it excludes nothing. */
function remarkOnStranger(
  mark: Placed<string>,
  cases: readonly LoadCase[],
  reading: Reading,
): void {
  if (cases.some((one) => one.mark === mark.value)) return;
  reading.report({
    code: 'alternative-unused',
    severity: 'remark',
    message: `no case \`${mark.value}\` is listed under \`cases\`, so that this alternative excludes nothing`,
    span: mark.span,
    hints: ['mend the mark, or leave it for a case that is still to come'],
  });
}
