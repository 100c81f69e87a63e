import type { BeamDefinition } from '../definitions.ts';
import type { OpenMember } from '../members/open-member.ts';

/** Remarks on points at which nothing stands. */
export function remarkOnPoints({ definition, file }: OpenMember): void {
  if (definition === undefined) return;
  for (const point of unusedPoints(definition))
    file.reading.report({
      code: 'point-unused',
      severity: 'remark',
      message: `nothing stands at point \`${point.name}\``,
      span: point.span,
      hints: ['leave it if the diagrams should name it'],
    });
}

function unusedPoints(beam: BeamDefinition): BeamDefinition['points'] {
  const places = [
    ...beam.loads.flatMap((load) =>
      load.kind === 'distributed' ? [load.start, load.end] : [load.at],
    ),
    ...beam.temperatures.flatMap(({ start, end }) => [start, end]),
    ...beam.carried.map((reaction) => reaction.at),
    ...beam.sections.flatMap(({ from, to }) => [from, to]),
  ];
  const used = new Set([
    beam.points[0]?.name,
    beam.points.at(-1)?.name,
    ...beam.supports.map((support) => support.point),
    ...beam.hinges.map((hinge) => hinge.point),
    ...places.map((place) => place.point),
    ...Object.values(beam.bracing ?? {}).flatMap((braced) => braced.split(', ')),
  ]);
  return beam.points.filter((point) => !used.has(point.name));
}
