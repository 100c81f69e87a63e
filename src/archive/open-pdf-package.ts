import type { Outcome } from '../diagnostics/index.ts';
import type { World } from '../world/index.ts';
import { carriedFolder, unreadable, withoutInputs } from './carried-folder.ts';
import type { OpenedPackage } from './opened-package.ts';

/** Opens a bound PDF by the files that travel in it. */
export async function openPdfPackage(
  world: World,
  path: string,
): Promise<Outcome<OpenedPackage>> {
  const answer = world.read(path);
  if (!('bytes' in answer)) {
    const why = 'refused' in answer ? answer.refused : 'it is gone';
    return { diagnostics: [unreadable(path, why)] };
  }
  const pdf = answer.bytes;
  const { readAttachments, readPdf } = await import('../pdf/index.ts');
  const file = readPdf(pdf);
  if ('problem' in file) return { diagnostics: [unreadable(path, file.problem)] };
  const attached = readAttachments(file);
  const files = attached.map(({ name, bytes }) => ({ path: name, bytes }));
  if (!files.some((one) => one.path === 'project.yaml')) {
    const [fault] = file.faults();
    const problem = fault === undefined ? withoutInputs(path) : unreadable(path, fault);
    return { diagnostics: [problem] };
  }
  const results = files.find((one) => one.path === 'results.json');
  return {
    value: {
      kind: 'pdf',
      path,
      world: carriedFolder(world, path, files),
      folder: path,
      pdf,
      ...(results === undefined
        ? {}
        : { results: new TextDecoder().decode(results.bytes) }),
    },
    diagnostics: [],
  };
}
