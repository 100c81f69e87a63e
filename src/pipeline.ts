/**
 * The whole program on one page: a project folder becomes a package.
 *
 * ```
 * project folder
 *    │  readProject      YAML files → Project                     checked definitions
 *    ▼
 * Project
 *    │  workMembers      idealise and solve, in load-path order   structures and solutions
 *    ▼
 * MemberWork[]
 *    │  deriveBeam       the worked steps as facts, checked
 *    ▼
 * BeamDerivation[]  ───── collectResults ─────▶ results.json
 *    │              ───── checkPrints ────────▶ MarkedFile[], steps worked by hand with their marks, into the report
 *    │  openSuperseded   the bag of the package that this one replaces, worked again and compared
 *    │  composeReport    templates → HTML → blocks
 *    ▼
 * Report  ─────────────── writePlain ─────────▶ text for a terminal
 *    │  layOut           lines, pages, drawings at fixed places
 *    ▼
 * PagedDocument
 *    │  writePdf
 *    ▼
 * package.pdf
 * ```
 *
 * Heavy rooms (layout with its typesetter, pdf) are entered by `await import`, so that `solve` and
 * `--help` stay light.
 *
 * @module
 */
import {
  closeProject,
  closureFaults,
  deriveMembers,
  workMembers,
  type DerivedMember,
  type ProjectClosure,
} from './derivation/index.ts';
import { hasErrors, type Diagnostic } from './diagnostics/index.ts';
import type { FontBook } from './font/index.ts';
import type { PagedDocument } from './layout/index.ts';
import type { WriteOptions } from './pdf/index.ts';
import { readProject, type Project } from './project/index.ts';
import {
  composePackage,
  concerning,
  faultyMembers,
  openSuperseded,
  packageResults,
  pictureFaults,
  setOtherwise,
  unknownMarks,
  type Composed,
  type Report,
  type ResultsOptions,
} from './report/index.ts';
import { writeResults } from './results/index.ts';
import {
  combinationsFor,
  noCombinations,
  type CombinationList,
} from './standards/index.ts';
import {
  digest,
  rememberReads,
  type RememberedFile,
  type World,
} from './world/index.ts';

/** A project worked to its derivations, with everything noticed on the way. */
export interface WorkedProject {
  /** Absent where the project itself cannot be read. */
  readonly project?: Project;
  readonly combinations: CombinationList;
  /** In sheet order; members whose own file is faulty stand at the end. */
  readonly members: readonly DerivedMember[];
  /** Forces in and out over all members that have results; none where no reaction is carried. */
  readonly closures: readonly ProjectClosure[];
  readonly diagnostics: readonly Diagnostic[];
}

/** What to bind, and who is told how far it is. */
export interface BindOptions {
  /** Marks of the members to bind; all where absent. */
  readonly only?: readonly string[];
  /** Binds the good members although others have errors, these with their error on their own sheet. */
  readonly keepGoing?: boolean;
  /** Stations of results.json: N equal stretches. */
  readonly stations?: number;
  readonly program: { readonly name: string; readonly version: string };
  /** Why the package is archived although it is not in order, a sentence each: written on the cover. */
  readonly asIs?: readonly string[];
  /** Told each stage as it begins. */
  readonly onStage?: (stage: Stage) => void;
}

/** The stages that take time, in their order. */
export type Stage = 'reading' | 'working' | 'composing' | 'layout' | 'writing' | 'done';

/** A bound package: its bytes and the first sheet of every anchor; absent where errors forbid it. */
export interface Bound {
  readonly worked: WorkedProject;
  readonly pdf?: Uint8Array;
  /** The check prints of a package that is past commenting on: a PDF of their own, kept beside it. */
  readonly checkPrints?: Uint8Array;
  readonly json?: string;
  /** Every file of the folder that was read, to the byte; they travel in the PDF. */
  readonly sources?: readonly RememberedFile[];
  readonly sheetCount?: number;
  readonly sheets?: Readonly<Record<string, number>>;
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads, solves and narrates a project. Never throws for a user's mistake. */
export function workProject(
  world: World,
  folder: string,
  tell: (stage: Stage) => void = () => undefined,
): WorkedProject {
  tell('reading');
  const read = readProject(world, folder);
  tell('working');
  if (read.value === undefined) {
    const { diagnostics } = read;
    return { combinations: noCombinations, members: [], closures: [], diagnostics };
  }
  const project = read.value;
  const combinations = combinationsFor({
    ...project.loads,
    standards: project.definition.standards,
  });
  const works = workMembers(project, combinations.combinations);
  const derived = deriveMembers(project, works);
  const found = derived.flatMap((member) =>
    member.kind === 'failed' ? member.diagnostics : [],
  );
  const closures = closeProject(derived);
  return {
    project,
    combinations,
    members: [...derived, ...faultyMembers(project, read.diagnostics)],
    closures,
    diagnostics: [...read.diagnostics, ...found, ...closureFaults(closures)],
  };
}

/** results.json of a worked project; `sheets` where a package was bound. */
export function resultsOf(worked: WorkedProject, options: ResultsOptions = {}): string {
  return writeResults(packageResults(worked, options));
}

/** Binds the package: works the project and makes the PDF and results.json, both as bytes to be written. */
export async function bindProject(
  world: World,
  folder: string,
  options: BindOptions,
): Promise<Bound> {
  const tell = options.onStage ?? (() => undefined);
  const remembered = rememberReads(world);
  const worked = workProject(remembered.world, folder, tell);
  const sources = remembered.within(folder);
  const unknown = unknownMarks(worked, options.only ?? []);
  const found = [...concerning(worked.diagnostics, options.only), ...unknown];
  const isStopped =
    unknown.length > 0 || (hasErrors(found) && options.keepGoing !== true);
  const { project } = worked;
  if (project === undefined || isStopped) return { worked, diagnostics: found };
  tell('composing');
  const { report, checkPrints, diagnostics } = await compose(world, worked, options);
  const all = [...found, ...diagnostics];
  if (report === undefined) return { worked, diagnostics: all };
  tell('layout');
  const { document, fonts } = await layOutPackage(world, project, report);
  const json = resultsOf(worked, {
    ...figuresAsked(options),
    sheets: document.sheets,
  });
  tell('writing');
  const { packageAttachments, writePdf } = await import('./pdf/index.ts');
  const attachments = packageAttachments(sources, json);
  const pdf = await writePdf(
    document,
    writeOptions(project, fonts, { sources, attachments, options }),
  );
  const prints =
    checkPrints && (await bindApart(world, project, checkPrints, { sources, options }));
  tell('done');
  const remarks = [...document.remarks, ...(prints?.remarks ?? [])];
  return {
    worked,
    pdf,
    ...(prints === undefined ? {} : { checkPrints: prints.pdf }),
    json,
    sources,
    sheetCount: document.pages.length,
    sheets: document.sheets,
    diagnostics: [...all, ...remarks.map(setOtherwise)],
  };
}

function figuresAsked({ only, stations }: BindOptions): ResultsOptions {
  return {
    ...(only === undefined ? {} : { marks: only }),
    ...(stations === undefined ? {} : { stations }),
  };
}

/** The package as blocks, with what changed since the one that it replaces; none where an error forbids it. */
async function compose(
  world: World,
  worked: WorkedProject,
  options: BindOptions,
): Promise<Composed> {
  const { project } = worked;
  if (project === undefined) return { diagnostics: [] };
  const before = await openSuperseded(world, project, workProject);
  if (hasErrors(before.diagnostics) && options.keepGoing !== true)
    return { diagnostics: before.diagnostics };
  const { superseded } = before;
  const composed = composePackage(world, worked, {
    ...options,
    ...(superseded === undefined ? {} : { superseded }),
  });
  const found = [...before.diagnostics, ...composed.diagnostics];
  if (composed.report === undefined) return { diagnostics: found };
  const { imageProblem } = await import('./pdf/index.ts');
  const faulty = pictureFaults(composed.report, project, imageProblem);
  return faulty.length > 0
    ? { diagnostics: [...found, ...faulty] }
    : { ...composed, diagnostics: found };
}

/** Check prints as a PDF of their own, with nothing attached, and what was to be remarked on them. */
async function bindApart(
  world: World,
  project: Project,
  report: Report,
  by: Pick<Required<Bound>, 'sources'> & { readonly options: BindOptions },
): Promise<{ readonly pdf: Uint8Array; readonly remarks: readonly string[] }> {
  const { document, fonts } = await layOutPackage(world, project, report);
  const { writePdf } = await import('./pdf/index.ts');
  const pdf = await writePdf(
    document,
    writeOptions(project, fonts, { ...by, attachments: [] }),
  );
  return { pdf, remarks: document.remarks };
}

/** A document on its pages, and the faces it was set in. */
interface LaidOut {
  readonly document: PagedDocument;
  readonly fonts: FontBook;
}

/** Fonts, typesetter and layout are heavy to load; they are entered only here. */
async function layOutPackage(
  world: World,
  { images, theme }: Project,
  report: Report,
): Promise<LaidOut> {
  const [{ openFonts }, { createTypesetter }, { layOut }, { defaultTheme, layOver }] =
    await Promise.all([
      import('./font/index.ts'),
      import('./typeset/index.ts'),
      import('./layout/index.ts'),
      import('./theme/index.ts'),
    ]);
  const fonts = openFonts((name) => world.ownFile(name));
  const typesetter = createTypesetter(fonts);
  const settings = { theme: layOver(defaultTheme, theme), fonts, typesetter, images };
  return { document: layOut(report, settings), fonts };
}

/** What goes into the file besides the pages, packed to half the size. */
function writeOptions(
  { definition, images }: Project,
  fonts: FontBook,
  {
    sources,
    attachments,
    options: { program, only = [], asIs = [] },
  }: Pick<Required<Bound>, 'sources'> &
    Pick<Required<WriteOptions>, 'attachments'> & { readonly options: BindOptions },
): WriteOptions {
  const date = definition.revisions.at(-1)?.date;
  const version = `${program.name} ${program.version}`;
  return {
    fonts,
    isPacked: true,
    images,
    attachments,
    producer: version,
    inputs: [
      version,
      ...sources.map(({ path, bytes }) => `${path} ${digest(bytes)}`),
      ...only.map((mark) => `only ${mark}`),
      ...asIs,
    ].join('\n'),
    ...(date === undefined ? {} : { date }),
  };
}
