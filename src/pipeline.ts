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
  deriveMembers,
  placeWords,
  workMembers,
  type BeamWork,
  type DerivedMember,
} from './derivation/index.ts';
import { hasErrors, nearest, placeAt, type Diagnostic } from './diagnostics/index.ts';
import type { FontBook } from './font/index.ts';
import type { PagedDocument } from './layout/index.ts';
import { readProject, type Project } from './project/index.ts';
import {
  composeReport,
  reactionTable,
  templateNames,
  type MemberReport,
  type Report,
} from './report/index.ts';
import {
  collectResults,
  writeResults,
  type EntryInput,
  type MemberInput,
} from './results/index.ts';
import { combinationsFor, type CombinationList } from './standards/index.ts';
import type { World } from './world/index.ts';

/** A project worked to its derivations, with everything noticed on the way. */
export interface WorkedProject {
  /** Absent where the project itself cannot be read. */
  readonly project?: Project;
  readonly combinations: CombinationList;
  /** In sheet order; members whose own file is faulty stand at the end. */
  readonly members: readonly DerivedMember[];
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
  /** Told each stage as it begins. */
  readonly onStage?: (stage: Stage) => void;
}

/** The stages that take time, in their order. */
export type Stage = 'reading' | 'working' | 'composing' | 'layout' | 'writing' | 'done';

/** A bound package: its bytes and the first sheet of every anchor; absent where errors forbid it. */
export interface Bound {
  readonly worked: WorkedProject;
  readonly pdf?: Uint8Array;
  readonly json?: string;
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
  const none: CombinationList = {
    combinations: [],
    notes: [],
    untaken: [],
    problems: [],
  };
  if (read.value === undefined) {
    return { combinations: none, members: [], diagnostics: read.diagnostics };
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
  return {
    project,
    combinations,
    members: [...derived, ...faultyMembers(project, read.diagnostics)],
    diagnostics: [...read.diagnostics, ...found],
  };
}

/** Members whose definition holds an error: they appear with it and without results. */
function faultyMembers(
  project: Project,
  diagnostics: readonly Diagnostic[],
): readonly DerivedMember[] {
  return project.faulty.map(({ mark, kind, title }) => ({
    kind: 'failed',
    mark,
    memberKind: kind,
    ...(title === undefined ? {} : { title }),
    diagnostics: diagnostics.filter(
      ({ member, severity }) => member === mark && severity === 'error',
    ),
  }));
}

/** results.json of a worked project; `sheets` where a package was bound. */
export function resultsOf(
  worked: WorkedProject,
  options: {
    readonly marks?: readonly string[];
    readonly stations?: number;
    readonly sheets?: Readonly<Record<string, number>>;
  } = {},
): string {
  const { project } = worked;
  if (project === undefined) throw new RangeError('the project could not be read');
  const { definition } = project;
  const revision = definition.revisions.at(-1)?.mark;
  const chosen = chosenMembers(worked.members, options.marks);
  return writeResults(
    collectResults({
      project: {
        ...(definition.number === undefined ? {} : { number: definition.number }),
        title: definition.title,
        ...(revision === undefined ? {} : { revision }),
        units: definition.units,
      },
      members: chosen.map((member) => memberInput(project, member, options.sheets)),
      ...(options.stations === undefined ? {} : { stations: options.stations }),
    }),
  );
}

/** One error for each mark that was asked for and is no member's; none where the project cannot be read. */
export function unknownMarks(
  { project, members }: WorkedProject,
  marks: readonly string[],
): readonly Diagnostic[] {
  if (project === undefined) return [];
  const known = members.map(markOf);
  return marks
    .filter((mark) => !known.includes(mark))
    .map((mark) => {
      const near = nearest(mark, known);
      return {
        severity: 'error',
        code: 'unknown-member',
        message: `the project has no member ${mark}`,
        hints: [
          near === undefined ? `its members: ${known.join(', ')}` : `write ${near}`,
        ],
      };
    });
}

/**
 * The diagnostics that concern the members asked for and the project as a whole; all of them where
 * one of those members leans on another that could not be solved, or where no marks are given.
 */
export function concerning(
  diagnostics: readonly Diagnostic[],
  marks: readonly string[] | undefined,
): readonly Diagnostic[] {
  if (marks === undefined) return diagnostics;
  const chosen = diagnostics.filter(
    ({ member }) => member === undefined || marks.includes(member),
  );
  return chosen.some(({ code }) => code === 'depends-on-unsolved')
    ? diagnostics
    : chosen;
}

function chosenMembers(
  members: readonly DerivedMember[],
  marks: readonly string[] | undefined,
): readonly DerivedMember[] {
  return marks === undefined
    ? members
    : members.filter((member) => marks.includes(markOf(member)));
}

/** The mark of a member, narrated or not. */
export function markOf(member: DerivedMember): string {
  return member.kind === 'derived' ? member.derivation.mark : member.mark;
}

function memberInput(
  project: Project,
  member: DerivedMember,
  sheets: Readonly<Record<string, number>> | undefined,
): MemberInput {
  const mark = markOf(member);
  const sheet = sheets?.[`member-${mark}`];
  const title = member.kind === 'derived' ? member.derivation.title : member.title;
  const identity = {
    mark,
    ...(title === undefined ? {} : { title }),
    ...(sheet === undefined ? {} : { sheet }),
  };
  if (member.kind === 'derived') {
    return {
      ...identity,
      outcome: 'solved',
      kind: 'beam',
      determinacy: member.work.solution.determinacy,
      entries: entriesOf(member.work),
    };
  }
  const [first] = member.diagnostics;
  return {
    ...identity,
    outcome: 'unsolved',
    kind: member.memberKind,
    ...(member.determinacy === undefined ? {} : { determinacy: member.determinacy }),
    error: {
      code: first?.code ?? 'unstable',
      message: first?.message ?? '',
      ...placeOf(project, first),
    },
  };
}

/** Cases, then combinations; a combination marked like a case is the same entry. */
function entriesOf({
  solution,
  combinations,
  combined,
}: BeamWork): readonly EntryInput[] {
  const uses = new Map<string, EntryInput>();
  for (const result of solution.results)
    uses.set(result.mark, { result, uses: ['case'] });
  for (const [index, result] of combined.entries()) {
    const known = uses.get(result.mark);
    const use = combinations[index]?.for ?? 'strength';
    uses.set(result.mark, {
      result: known?.result ?? result,
      uses: [...(known?.uses ?? []), use],
    });
  }
  return [...uses.values()];
}

function placeOf(
  project: Project,
  diagnostic: Diagnostic | undefined,
): { readonly file?: string; readonly line?: number } {
  const span = diagnostic?.span;
  if (span === undefined) return {};
  const source = project.files.find(({ path }) => path === span.file);
  return source === undefined
    ? { file: span.file }
    : { file: span.file, line: placeAt(source, span.start).line };
}

/** The package as blocks, from a worked project. */
export function composePackage(
  world: World,
  worked: WorkedProject,
  options: Pick<BindOptions, 'only' | 'program'>,
): { readonly report?: Report; readonly diagnostics: readonly Diagnostic[] } {
  const { project, combinations } = worked;
  if (project === undefined) return { diagnostics: [] };
  const members = chosenMembers(worked.members, options.only);
  const marks = members.map(markOf);
  const composed = composeReport(
    {
      project,
      combinations,
      members: members.map((member) => memberReport(project, member)),
      loadPath: project.members.flatMap(({ mark, carried }) =>
        carried
          .filter(({ member }) => marks.includes(member) && marks.includes(mark))
          .map(({ member, point, at }) => ({
            from: member,
            point,
            to: mark,
            at: placeWords(at),
          })),
      ),
      program: options.program,
    },
    templatesOf(world, project),
  );
  return {
    ...(composed.value === undefined ? {} : { report: composed.value }),
    diagnostics: composed.diagnostics,
  };
}

/** The program's templates, the project's own in place of those of the same name. */
function templatesOf(world: World, project: Project): Readonly<Record<string, string>> {
  const decoder = new TextDecoder();
  const own = templateNames.map((name) => [
    name,
    decoder.decode(world.ownFile(`report-templates/${name}.hbs`)),
  ]);
  const replaced = Object.entries(project.templates).map(([file, text]) => [
    file.replace(/\.hbs$/, ''),
    text,
  ]);
  return Object.fromEntries([...own, ...replaced]) as Readonly<Record<string, string>>;
}

function memberReport(project: Project, member: DerivedMember): MemberReport {
  if (member.kind === 'failed') {
    return {
      kind: 'failed',
      mark: member.mark,
      ...(member.title === undefined ? {} : { title: member.title }),
      findings: member.diagnostics.map((diagnostic) => {
        const { file, line } = placeOf(project, diagnostic);
        return {
          code: diagnostic.code,
          place:
            file === undefined
              ? ''
              : line === undefined
                ? file
                : `${file}, line ${line}`,
          message: diagnostic.message,
          hints: diagnostic.hints,
        };
      }),
    };
  }
  const { units, figures } = project.definition;
  return {
    kind: 'derived',
    derivation: member.derivation,
    reactions: reactionTable(member.work, { system: units, figures: figures.value }),
    closure: closureOf(member.work),
  };
}

/** The greatest residual beside its scale. */
function closureOf({ solution }: BeamWork): number {
  const shares = solution.results.flatMap(({ residuals }) =>
    residuals.map(({ residual, scale }) =>
      scale === 0 ? 0 : Math.abs(residual) / scale,
    ),
  );
  return Math.max(0, ...shares);
}

/** Binds the package: works the project and makes the PDF and results.json, both as bytes to be written. */
export async function bindProject(
  world: World,
  folder: string,
  options: BindOptions,
): Promise<Bound> {
  const tell = options.onStage ?? (() => undefined);
  const worked = workProject(world, folder, tell);
  const unknown = unknownMarks(worked, options.only ?? []);
  const found = [...concerning(worked.diagnostics, options.only), ...unknown];
  const isStopped =
    unknown.length > 0 || (hasErrors(found) && options.keepGoing !== true);
  if (worked.project === undefined || isStopped) return { worked, diagnostics: found };
  tell('composing');
  const { report, diagnostics } = composePackage(world, worked, options);
  const all = [...found, ...diagnostics];
  if (report === undefined) return { worked, diagnostics: all };
  const laidOut = await layOutPackage(world, worked.project, report, tell);
  const json = resultsOf(worked, {
    ...(options.only === undefined ? {} : { marks: options.only }),
    ...(options.stations === undefined ? {} : { stations: options.stations }),
    sheets: laidOut.document.sheets,
  });
  tell('writing');
  const pdf = await writePackage(worked.project, laidOut, {
    json,
    program: options.program,
  });
  tell('done');
  const { pages, sheets, remarks } = laidOut.document;
  return {
    worked,
    pdf,
    json,
    sheetCount: pages.length,
    sheets,
    diagnostics: [...all, ...remarks.map(layoutRemark)],
  };
}

/** What layout could not set as it was asked, as a remark: a sentence becomes a message. */
function layoutRemark(sentence: string): Diagnostic {
  return {
    severity: 'remark',
    code: 'set-otherwise',
    message: sentence
      .replace(/^\p{Lu}/u, (letter) => letter.toLowerCase())
      .replace(/\.$/u, ''),
    hints: [],
  };
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
  tell: (stage: Stage) => void,
): Promise<LaidOut> {
  tell('layout');
  const [{ openFonts }, { createTypesetter }, { layOut }, { defaultTheme, layOver }] =
    await Promise.all([
      import('./font/index.ts'),
      import('./typeset/index.ts'),
      import('./layout/index.ts'),
      import('./theme/index.ts'),
    ]);
  const fonts = openFonts((name) => world.ownFile(name));
  const typesetter = createTypesetter(fonts);
  const document = layOut(report, {
    theme: layOver(defaultTheme, theme),
    fonts,
    typesetter,
    images,
  });
  return { document, fonts };
}

/** The PDF, with the definition files and results.json attached. */
async function writePackage(
  project: Project,
  { document, fonts }: LaidOut,
  {
    json,
    program,
  }: { readonly json: string; readonly program: BindOptions['program'] },
): Promise<Uint8Array> {
  const { writePdf } = await import('./pdf/index.ts');
  const encoder = new TextEncoder();
  const date = project.definition.revisions.at(-1)?.date;
  const version = `${program.name} ${program.version}`;
  return writePdf(document, {
    fonts,
    images: project.images,
    attachments: [
      ...project.files.map(({ path, text }) => ({
        name: path,
        bytes: encoder.encode(text),
        mime: 'application/yaml',
        description: 'Definition file, as it was read',
        relationship: 'Source' as const,
      })),
      {
        name: 'results.json',
        bytes: encoder.encode(json),
        mime: 'application/json',
        description: 'Every figure of the package, at full precision',
        relationship: 'Data' as const,
      },
    ],
    producer: version,
    inputs: [
      version,
      ...project.files.map(({ path, sha256 }) => `${path} ${sha256}`),
    ].join('\n'),
    ...(date === undefined ? {} : { date }),
  });
}
