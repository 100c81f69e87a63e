import type { BeamDefinition } from '../definitions.ts';
import type { LoadsFile } from '../loads-file/loads-file.ts';
import type { OpenFile } from '../reading.ts';
import type { ReadFolder } from './read-folder.ts';
import { listed } from '../shape/listed.ts';

/** Remarks on cases that may stand on some spans and not on others, where a member has several spans: they are worked as they are placed. */
export function remarkOnPattern(
  { members }: ReadFolder,
  { parts, reading }: OpenFile<LoadsFile>,
): void {
  for (const { name, value } of parts.cases ?? []) {
    if (value?.pattern.value !== true) continue;
    const concerned = members
      .flatMap(({ definition }) => definition ?? [])
      .filter((beam) => hasSeveralSpans(beam) && carries(beam, name.value))
      .map((beam) => beam.mark);
    if (concerned.length === 0) continue;
    reading.report({
      code: 'pattern-not-worked',
      severity: 'remark',
      message: `case ${name.value} is worked as it is placed, not span by span, on ${listed(concerned)}`,
      span: value.pattern.span ?? name.span,
      hints: [
        'work the arrangements that matter as cases of their own, listed under `alternatives`',
      ],
    });
  }
}

/** Spans and overhangs: stretches between neighbouring supports and ends. */
function hasSeveralSpans({ points, supports }: BeamDefinition): boolean {
  const places = [
    points[0]?.name,
    points.at(-1)?.name,
    ...supports.map((one) => one.point),
  ];
  return new Set(places).size > 2;
}

function carries({ loads, carried }: BeamDefinition, mark: string): boolean {
  return carried.length > 0 || loads.some((load) => load.case === mark);
}
