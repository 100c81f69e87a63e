import { hasErrors, type Diagnostic, type Outcome } from '../diagnostics/index.ts';
import { bindProject, workProject, type Bound, type Stage } from '../pipeline.ts';
import { readProject, type Project } from '../project/index.ts';
import { openSuperseded } from '../report/index.ts';
import { readResults } from '../results/index.ts';
import { digest, rememberReads, type World } from '../world/index.ts';
import { asIsReasons, asRemark } from './as-is.ts';
import { bagContents, type Kept } from './bag-contents.ts';
import { bagPlace, placeProblem } from './bag-place.ts';
import { incompleteRevision } from './incomplete-revision.ts';
import { recordOf } from './record-of.ts';
import type { ArchiveRecord } from './record.ts';
import { compareSigned, readSigned } from './signed-copy.ts';
import { supersededBag } from './superseded.ts';

/** How a package is to be archived. */
export interface ArchiveOptions {
  readonly program: { readonly name: string; readonly version: string };
  /** Where the bag is to go; absent: `FOLDER/issued/NUMBER-REVISION.zip`. */
  readonly output?: string;
  /** Archives what is not in order too, and writes on the cover why it is not. Default: false. */
  readonly isAsIs?: boolean;
  /** Path of the signed PDF that is kept beside the bound one. */
  readonly signed?: string;
  /** Told each stage as it begins. */
  readonly onStage?: (stage: Stage) => void;
}

/** A package ready to be kept: `keepBag` writes it. */
export interface Archived {
  /** Where the bag is to go. */
  readonly path: string;
  readonly bytes: Uint8Array;
  /** SHA-256 of the whole zip. */
  readonly sha256: string;
  readonly record: ArchiveRecord;
  /** Paths of the payload, without `data/`, in no particular order. */
  readonly files: readonly string[];
}

/**
 * Binds a project and lays what is to be kept of it into a bag: equal folders give equal bytes. Without a value
 * where the package does not bind cleanly or its record of revisions leaves something open, unless `isAsIs`; and where
 * a bag of the name is there already. Writes nothing.
 */
export async function archiveProject(
  world: World,
  folder: string,
  options: ArchiveOptions,
): Promise<Outcome<Archived>> {
  // One reading for all that follows: what is judged, bound and kept is the same.
  const steady = rememberReads(world).world;
  const read = readProject(steady, folder);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const project = read.value;
  const path = options.output ?? bagPlace(folder, project.definition);
  const problem = placeProblem(world, path, options.output !== undefined);
  const signed =
    options.signed === undefined ? undefined : readSigned(world, options.signed);
  const early = [
    ...(problem === undefined ? [] : [problem]),
    ...(signed !== undefined && 'problem' in signed ? [signed.problem] : []),
  ];
  if (early.length > 0) return { diagnostics: early };
  const ready = await bindForKeeping(steady, project, options);
  if (!('reasons' in ready)) return ready;
  const copy = signed !== undefined && 'bytes' in signed ? signed.bytes : undefined;
  return await bagOf(steady, { ...ready, path, copy }, options);
}

/** A package bound as it will be kept. */
interface BoundForKeeping {
  readonly project: Project;
  readonly bound: Kept['bound'];
  /** Why it is not in order, a sentence each. */
  readonly reasons: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}

async function bindForKeeping(
  world: World,
  project: Project,
  { program, onStage, isAsIs = false }: ArchiveOptions,
): Promise<BoundForKeeping | Outcome<Archived>> {
  const { folder } = project;
  const missing = incompleteRevision(project);
  const telling = onStage === undefined ? {} : { onStage };
  const found =
    isAsIs || missing.length > 0
      ? [...missing, ...(await foundBefore(world, project, onStage))]
      : [];
  if (!isAsIs && missing.length > 0) return { diagnostics: found };
  const reasons = asIsReasons(found);
  const bound = await bindProject(world, folder, {
    program,
    ...telling,
    ...(isAsIs ? { keepGoing: true, asIs: reasons } : {}),
  });
  const { diagnostics } = bound;
  if (!isBound(bound) || (!isAsIs && hasErrors(diagnostics))) return { diagnostics };
  return {
    project,
    bound,
    reasons,
    diagnostics: isAsIs ? [...missing, ...diagnostics].map(asRemark) : diagnostics,
  };
}

/** What binding will find before it composes anything: the reasons stand on the cover. */
async function foundBefore(
  world: World,
  project: Project,
  onStage: ArchiveOptions['onStage'],
): Promise<readonly Diagnostic[]> {
  const { diagnostics } = workProject(world, project.folder, onStage);
  const before = await openSuperseded(world, project, workProject);
  return [...diagnostics, ...before.diagnostics];
}

function isBound(bound: Bound): bound is Kept['bound'] {
  return (
    bound.pdf !== undefined && bound.json !== undefined && bound.sources !== undefined
  );
}

async function bagOf(
  world: World,
  {
    project,
    bound,
    reasons,
    path,
    copy,
    diagnostics,
  }: BoundForKeeping & { readonly path: string; readonly copy: Uint8Array | undefined },
  { program, signed: signedPath = '' }: ArchiveOptions,
): Promise<Outcome<Archived>> {
  const reading = readResults(bound.json);
  if (reading.kind !== 'results')
    throw new TypeError('the figures just written cannot be read back');
  const superseded = supersededBag(world, project.folder, project.definition);
  const signed =
    copy === undefined ? undefined : compareSigned(bound.pdf, copy, signedPath);
  const record = recordOf({
    definition: project.definition,
    results: reading.results,
    sheets: bound.sheetCount ?? 0,
    program,
    supersededSha256: superseded.sha256,
    asIs: reasons,
    signed: signed?.entry ?? null,
  });
  const { pathFaults, writeBag } = await import('../bag/index.ts');
  const contents = bagContents(world, {
    bound,
    record,
    ...(copy === undefined ? {} : { signed: copy }),
  });
  const files = contents.payload.map((file) => file.path);
  const faults = pathFaults(files);
  if (faults.length > 0)
    return { diagnostics: [...diagnostics, ...faults.map(notKept)] };
  const bytes = await writeBag(contents);
  return {
    value: { path, bytes, sha256: digest(bytes), record, files },
    diagnostics: [...diagnostics, ...superseded.remarks, ...(signed?.remarks ?? [])],
  };
}

function notKept({
  path,
  reason,
}: {
  readonly path: string;
  readonly reason: string;
}): Diagnostic {
  return {
    severity: 'error',
    code: 'name-not-kept',
    message: `${path.replace(/^definition\//u, '')} ${reason}, and a bag holds no such name`,
    hints: ['rename the file'],
  };
}
