import { archiveProject, type Archived } from '../../src/archive/index.ts';
import { openBag, writeBag, type KeptFile } from '../../src/bag/index.ts';
import { memoryWorld } from '../../src/world/index.ts';

/** The files of a small project that archives without a remark, by path. */
export const sluiceFiles: Readonly<Record<string, string>> = {
  'project.yaml': [
    'project: { title: Sluice house, number: "2031-207", status: issued }',
    'people: { prepared: { name: J. Rowan, initials: JR }, checked: { name: M. Ash, initials: MA } }',
    'revisions: [ { mark: A, date: 2031-05-02, note: First issue, reason: for construction, prepared: JR, checked: MA, sheets: all } ]',
    'units: us',
    'criteria: { deflection_limits: { L: L/360 } }',
    '',
  ].join('\n'),
  'loads.yaml':
    'cases: { D: { kind: dead }, L: { kind: live } }\ncombinations: [ asce7-strength ]\n',
  'members/b1.yaml': [
    'mark: B1',
    'kind: beam',
    'points: { A: 0 ft, B: 12 ft }',
    'supports: { A: pin, B: roller }',
    'section: W12x26',
    'material: A992',
    'self_weight: D',
    'loads: [ { case: L, uniform: 1 kip/ft } ]',
    '',
  ].join('\n'),
};

/** The program that the tests archive and verify with. */
export const program = { name: 'sumzero', version: '0.1.0' };

/** Archives the sluice house, files changed, added (or taken away by an undefined text). */
export async function archivedSluice(
  changes: Readonly<Record<string, string | undefined>> = {},
  options: Partial<Parameters<typeof archiveProject>[2]> & {
    readonly beside?: Readonly<Record<string, Uint8Array>>;
  } = {},
): Promise<Archived> {
  const { beside = {}, ...rest } = options;
  const files = Object.entries({ ...sluiceFiles, ...changes }).flatMap(
    ([path, text]) => (text === undefined ? [] : [[`sluice/${path}`, text] as const]),
  );
  const world = memoryWorld({ ...Object.fromEntries(files), ...beside });
  const { value, diagnostics } = await archiveProject(world, 'sluice', {
    program,
    ...rest,
  });
  if (value === undefined)
    throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return value;
}

/** The payload of a bag, by path without `data/`. */
export async function payloadIn(
  bytes: Uint8Array,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { value: bag } = await openBag(memoryWorld({ 'bag.zip': bytes }), 'bag.zip');
  if (bag === undefined) throw new Error('no bag');
  const files = new Map<string, Uint8Array>();
  for (const { path } of bag.files)
    if (path.startsWith('data/'))
      files.set(path.slice('data/'.length), (await bag.read(path))!);
  return files;
}

/** The bag forged: another payload under lists and digests that are all in order. */
export async function forged(
  bytes: Uint8Array,
  change: (payload: Map<string, Uint8Array>) => void,
): Promise<Uint8Array> {
  const files = new Map(await payloadIn(bytes));
  change(files);
  const payload: readonly KeptFile[] = [...files].map(([path, content]) => ({
    path,
    bytes: content,
  }));
  return await writeBag({ payload, info: [] });
}
