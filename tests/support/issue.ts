import type { MemoryWorld } from '../../src/world/index.ts';
import { shed } from './command-line.ts';

/** A complete row of a record of revisions. */
export const completeRow =
  '{ mark: A, date: 2031-03-14, note: First issue, reason: Permit, prepared: AQ, checked: RT, sheets: all }';

/** project.yaml of a package that can be archived; `rest` stands beside its number, `rows` in its record of revisions. */
export function issueYaml(
  rest: string = 'status: issued',
  rows: string = `[ ${completeRow} ]`,
): string {
  return [
    `project: { number: "2031-014", title: Potting shed, office: Fernhill Structural, ${rest} }`,
    'people:',
    '  prepared: { name: A. Quill, initials: AQ, date: 2031-03-12 }',
    '  checked: { name: R. Tamsin, initials: RT, date: 2031-03-14, licence: "PE 00000" }',
    `revisions: ${rows}`,
    'units: us',
    '',
  ].join('\n');
}

/** The folder `shed` with a complete record of revisions, ready to be archived. */
export function issueShed(
  changes: Readonly<Record<string, string | undefined>> = {},
): MemoryWorld {
  return shed({
    'project.yaml': issueYaml(),
    'members/b2.yaml': undefined,
    'members/b1.yaml': [
      'mark: B1',
      'title: Ridge beam',
      'kind: beam',
      'points: { A: 0 ft, B: 12 ft }',
      'supports: { A: pin, B: roller }',
      'section: { I: 204 in^4 }',
      'material: { E: 29000 ksi }',
      'deflection_limits: { S: L/360 }',
      'loads: [ { case: S, point: 2 kip, at: 6 ft } ]',
      '',
    ].join('\n'),
    ...changes,
  });
}
