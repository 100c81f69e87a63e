import type { Diagnostic } from '../diagnostics/index.ts';
import type { ProjectDefinition } from '../project/index.ts';
import type { World } from '../world/index.ts';
import { below } from './bag-place.ts';
import { digestOfFile } from './digest-of-file.ts';

/** The checksum of the bag that a package replaces, and what is amiss with what the file says of it. */
export interface Superseded {
  readonly sha256: string | null;
  readonly remarks: readonly Diagnostic[];
}

/**
 * Looks at the bag that a package supersedes, where it is named and at hand. It is read, never changed; that it
 * is missing or not whole is for the binding to say, which tells the changes since.
 */
export function supersededBag(
  world: World,
  folder: string,
  { supersedes, revisions }: ProjectDefinition,
): Superseded {
  if (supersedes === undefined)
    return { sha256: null, remarks: revisions.length > 1 ? [notSaid(revisions)] : [] };
  const { bag } = supersedes;
  if (bag === undefined) return { sha256: null, remarks: [] };
  const isAbsolute = /^(?:[/\\]|[A-Za-z]:)/u.test(bag);
  const sha256 = digestOfFile(world, isAbsolute ? bag : below(folder, bag));
  return { sha256: sha256 ?? null, remarks: [] };
}

function notSaid(revisions: ProjectDefinition['revisions']): Diagnostic {
  const before = revisions.at(-2);
  const span = revisions.at(-1)?.span;
  return {
    severity: 'remark',
    code: 'superseded-not-said',
    message: `revision ${revisions.at(-1)?.mark ?? ''} follows ${before?.mark ?? ''}, and nothing says that it supersedes it`,
    ...(span === undefined ? {} : { span }),
    hints: [
      `write supersedes: { number: …, revision: "${before?.mark ?? ''}", bag: … } under project`,
    ],
  };
}
