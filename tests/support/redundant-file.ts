import type { BeamStructure, Restraint, Support } from '../../src/statics/index.ts';
import { folderOf } from './beam-file.ts';

/** The texts of a project folder in SI that holds an indeterminate structure: stiffness by stretch, springs, settlements and warmth too. */
export function redundantFolder(
  structure: BeamStructure,
): Readonly<Record<string, string>> {
  const plain = folderOf({ ...structure, curvatures: [], stiffness: [] });
  const supports = structure.supports
    .map((support) => `${support.point}: ${supportText(support)}`)
    .join(', ');
  const sections = (structure.stiffness ?? [])
    .map(
      ({ from, to, EI }) =>
        `\n  - { from: ${from} m, to: ${to} m, section: { I: ${EI / 200e9} m^4 } }`,
    )
    .join('');
  const warmth = (structure.curvatures ?? []).map(
    ({ from, to, curvature, case: mark }) =>
      `\n  - { case: ${mark}, temperature: { difference: ${-curvature * 4e4} K, depth: 0.4 m, expansion: 1e-5 1/K }, from: ${from} m, to: ${to} m }`,
  );
  const member = (plain['members/b1.yaml'] ?? '')
    .replace(/^supports: .*$/m, `supports: { ${supports} }`)
    .replace(/^section: .*$/m, `sections:${sections}`)
    .replace(/^loads: \[\]$/m, 'loads:')
    .trimEnd();
  const isBare = member.endsWith('loads:') && warmth.length === 0;
  return {
    'project.yaml': plain['project.yaml'] ?? '',
    'loads.yaml': `cases:\n${structure.cases.map((mark) => `  ${mark}: { kind: dead }\n`).join('')}`,
    'members/b1.yaml': `${member}${isBare ? ' []' : warmth.join('')}\n`,
  };
}

function supportText({ type, restraints }: Support): string {
  const force = restraints.find((r) => r.kind === 'force' && r.direction[1] !== 0);
  const turning = restraints.find(
    ({ kind, stiffness }) => kind === 'moment' && stiffness !== undefined,
  );
  const parts = [
    `type: ${type}`,
    ...(type === 'roller' && force?.kind === 'force'
      ? [
          `normal: ${Math.round((Math.atan2(force.direction[1], force.direction[0]) * 180) / Math.PI)} deg`,
        ]
      : []),
    ...(force?.stiffness === undefined ? [] : [`stiffness: ${force.stiffness} N/m`]),
    ...(turning === undefined ? [] : [`rotation: ${turning.stiffness} N m/rad`]),
    ...settlementText(force),
  ];
  return `{ ${parts.join(', ')} }`;
}

function settlementText(force: Restraint | undefined): readonly string[] {
  const [one] = force?.settlements ?? [];
  if (one === undefined || force?.kind !== 'force' || one.value === 0) return [];
  return [`settlement: ${one.value / force.direction[1]} m, case: ${one.case}`];
}
