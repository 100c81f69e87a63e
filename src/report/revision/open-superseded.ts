import type { OpenBag } from '../../bag/index.ts';
import type { Diagnostic } from '../../diagnostics/index.ts';
import type { Project } from '../../project/index.ts';
import { memoryWorld, startDigest, type World } from '../../world/index.ts';
import type { WorkedMembers } from '../worked-members.ts';
import type { UnknownChanges } from '../report-input.ts';
import type { Superseded } from './superseded.ts';

/** What came of opening the bag that a package replaces; empty where it names none. */
export interface SupersededOutcome {
  readonly superseded?: Superseded | UnknownChanges;
  readonly diagnostics: readonly Diagnostic[];
}

/** Works a project folder, as the pipeline does. */
type Work = (world: World, folder: string) => WorkedMembers;

// Where the definition files of a package lie in its bag, and in the world that they are worked in.
const folder = 'definition';

/**
 * Opens the bag that project.yaml says is superseded, proves it, and works its project again with the
 * present version. A package that cannot tell its changes must not look as if it had none: what
 * stands in the way is an error, and while the package is preliminary a remark.
 */
export async function openSuperseded(
  world: World,
  project: Project,
  work: Work,
): Promise<SupersededOutcome> {
  const { supersedes, status } = project.definition;
  const bag = supersedes?.bag;
  if (bag === undefined) return { diagnostics: [] };
  const found = await readBag(world, placeOf(project.folder, bag));
  const superseded =
    'why' in found ? found : workedFrom(found, project, { world, work });
  if (!('why' in superseded))
    return { superseded: { bag, ...superseded }, diagnostics: [] };
  const diagnostic: Diagnostic = {
    severity: status.value === 'preliminary' ? 'remark' : 'error',
    code: 'changes-unknown',
    message: `what changed since the package in ${bag} cannot be told: ${superseded.why}`,
    ...(supersedes?.span === undefined ? {} : { span: supersedes.span }),
    hints: [superseded.hint],
  };
  return { superseded: { bag, why: superseded.why }, diagnostics: [diagnostic] };
}

/** Why a bag is of no use, and what to try. */
interface Refusal {
  readonly why: string;
  readonly hint: string;
}

interface BagContents {
  readonly sha256: string;
  /** The definition files by their path in the project folder. */
  readonly files: Readonly<Record<string, Uint8Array>>;
}

async function readBag(world: World, path: string): Promise<BagContents | Refusal> {
  const { openBag, payloadOf, proveBag } = await import('../../bag/index.ts');
  const opened = await openBag(world, path);
  if (opened.value === undefined) return refused(opened.diagnostics, path);
  const bag = opened.value;
  try {
    const [fault] = await proveBag(bag);
    if (fault !== undefined)
      return {
        why: `the bag is not as it was issued: ${fault.message}`,
        hint: 'get a whole copy of the bag from where it is kept',
      };
    const files = await payloadOf(bag, folder);
    if (files.value === undefined) return refused(files.diagnostics, path);
    return { sha256: digestOf(bag), files: files.value };
  } finally {
    bag.close();
  }
}

function refused(diagnostics: readonly Diagnostic[], path: string): Refusal {
  return {
    why: diagnostics[0]?.message ?? `${path} cannot be read`,
    hint: 'write the path of the bag from the project folder on, or take `bag` out: the package then says nothing of changes',
  };
}

const pieceLength = 1_048_576;

/** SHA-256 of the zip itself. */
function digestOf({ zip }: OpenBag): string {
  const digesting = startDigest();
  for (let at = 0; at < zip.size; at += pieceLength)
    digesting.add(zip.readAt(at, Math.min(pieceLength, zip.size - at)));
  return digesting.end();
}

function workedFrom(
  { sha256, files }: BagContents,
  { definition: { supersedes, number } }: Project,
  { world, work }: { readonly world: World; readonly work: Work },
): Omit<Superseded, 'bag'> | Refusal {
  const placed = Object.entries(files).map(([path, bytes]) => [
    `${folder}/${path}`,
    bytes,
  ]);
  const kept = memoryWorld(
    Object.fromEntries(placed) as Readonly<Record<string, Uint8Array>>,
  );
  const worked = work({ ...kept, ownFile: world.ownFile }, folder);
  const earlier = worked.project?.definition;
  if (earlier === undefined)
    return {
      why: 'this version of the program cannot read the project in it',
      hint: 'bind the earlier folder to see what it objects to, and archive it anew',
    };
  const named = { number: supersedes?.number ?? number, mark: supersedes?.revision };
  const mark = earlier.revisions.at(-1)?.mark;
  const isNumber = named.number === undefined || named.number === earlier.number;
  if (isNumber && (named.mark === undefined || named.mark === mark))
    return { sha256, worked };
  return {
    why: `the bag holds ${nameOf(earlier.number, mark)}, not ${nameOf(named.number, named.mark)}`,
    hint: 'name the bag of the package that is superseded, or mend number and revision beside it',
  };
}

function nameOf(number: string | undefined, mark: string | undefined): string {
  const of = number === undefined ? 'a package without a number' : `package ${number}`;
  return mark === undefined ? of : `${of} revision ${mark}`;
}

/** A path as it is where it is absolute, else from the project folder on, `..` worked out. */
export function placeOf(project: string, path: string): string {
  if (/^(?:[/\\]|[A-Za-z]:)/u.test(path)) return path;
  const steps: string[] = [];
  for (const step of `${project}/${path}`.split(/[/\\]/u)) {
    const last = steps.at(-1);
    const isBack = step === '..' && last !== undefined && last !== '..' && last !== '';
    if (isBack) steps.pop();
    else if (step !== '.' && (step !== '' || steps.length === 0)) steps.push(step);
  }
  return steps.join('/');
}
