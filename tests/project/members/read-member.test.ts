import { expect, test } from 'vitest';
import { beamYaml, readFolder } from '../../support/folder.ts';

test('a member of a kind that is not worked yet is at fault with its title, and the others stand', () => {
  const { value, diagnostics } = readFolder({
    'members/b1.yaml': beamYaml(),
    'members/t1.yaml': 'mark: T1\ntitle: Side truss\nkind: truss\n',
    'members/f1.yaml': 'mark: F1\nkind: frame\n',
  });
  expect(value?.members.map((member) => member.mark)).toEqual(['B1']);
  expect(value?.faulty).toEqual([
    { mark: 'F1', kind: 'frame', file: 'members/f1.yaml' },
    { mark: 'T1', kind: 'truss', title: 'Side truss', file: 'members/t1.yaml' },
  ]);
  expect(
    diagnostics
      .filter((one) => one.severity === 'error')
      .map((one) => [one.code, one.member]),
  ).toEqual([
    ['not-supported', 'F1'],
    ['not-supported', 'T1'],
  ]);
});

test('a member without a mark goes by the name of its file', () => {
  const { value } = readFolder({ 'members/edge-beam.yaml': 'kind: beam\n' });
  expect(value?.faulty).toEqual([
    { mark: 'edge-beam', kind: 'beam', file: 'members/edge-beam.yaml' },
  ]);
});
