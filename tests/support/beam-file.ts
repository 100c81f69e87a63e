import type {
  BeamStructure,
  Load,
  Restraint,
  Support,
} from '../../src/statics/index.ts';

/** The texts of a project folder in SI that holds a structure as a beam's file, loads that turn their direction as two. */
export function folderOf(structure: BeamStructure): Readonly<Record<string, string>> {
  const points = structure.points.map(({ name, x }) => `${name}: ${x} m`).join(', ');
  const supports = structure.supports
    .map((support) => `${support.point}: ${supportText(support)}`)
    .join(', ');
  const cases = structure.cases
    .map((mark) => `  ${mark}: { kind: ${mark === 'D' ? 'dead' : 'live'} }\n`)
    .join('');
  return {
    'project.yaml': 'project: { title: Anything }\nunits: si\n',
    'loads.yaml': `cases:\n${cases}combinations: [ asce7-strength ]\n`,
    'members/b1.yaml': [
      'mark: B1',
      'kind: beam',
      `points: { ${points} }`,
      `supports: { ${supports} }`,
      `hinges: [ ${structure.hinges.map(({ point }) => point).join(', ')} ]`,
      'material: { E: 200 GPa }',
      'section: { I: 1e8 mm^4 }',
      `loads:${structure.loads.flatMap((load) => loadTexts(load, structure)).join('') || ' []'}`,
      '',
    ].join('\n'),
  };
}

function degreesOf([dx, dy]: readonly [number, number]): number {
  return (Math.atan2(dy, dx) * 180) / Math.PI;
}

function supportText({ type, restraints }: Support): string {
  const [first] = restraints;
  if (type === 'spring')
    return `{ type: spring, stiffness: ${stiffnessOf(first)} N/m }`;
  if (type !== 'roller' || first?.kind !== 'force') return type;
  return `{ type: roller, normal: ${Math.round(degreesOf(first.direction))} deg }`;
}

function stiffnessOf(restraint: Restraint | undefined): number {
  return restraint?.stiffness ?? 1e6;
}

function loadTexts(load: Load, structure: BeamStructure): readonly string[] {
  const line = (rest: string): string => `\n  - { case: ${load.case}, ${rest} }`;
  switch (load.kind) {
    case 'couple': {
      const isAtHinge = structure.hinges.some(({ x }) => Math.abs(x - load.x) < 1e-6);
      const side = isAtHinge ? `, side: ${load.side ?? 'left'}` : '';
      return [
        line(
          `couple: ${Math.abs(load.m)} N m, at: ${load.x} m, turn: ${load.m < 0 ? 'clockwise' : 'counterclockwise'}${side}`,
        ),
      ];
    }
    case 'point': {
      const size = Math.hypot(load.fx, load.fy);
      return [
        line(
          `point: ${size} N, at: ${load.x} m, direction: ${degreesOf([load.fx, load.fy])} deg`,
        ),
      ];
    }
    case 'distributed': {
      const along = (
        direction: string,
        [start, end]: readonly [number, number],
      ): readonly string[] =>
        start === 0 && end === 0
          ? []
          : [
              line(
                `varying: [ ${start} N/m, ${end} N/m ], from: ${load.from} m, to: ${load.to} m, direction: ${direction}`,
              ),
            ];
      return [
        ...along('up', [load.y1, load.y2]),
        ...along('right', [load.x1, load.x2]),
      ];
    }
  }
}
