import { resultsOf, workProject, type WorkedProject } from '../../pipeline.ts';
import type { RememberedFile, World } from '../../world/index.ts';
import { carriedFolder } from '../carried-folder.ts';
import type { Verification } from '../verification.ts';
import { compareFigures } from './compare-figures.ts';
import { isObject, itemsOf, keyOf, textOf, type Json } from './json.ts';

/** What is worked again, and what it is held against. */
export interface Rework {
  /** Gives the program's own files; no other is read. */
  readonly world: World;
  /** The project folder. */
  readonly files: readonly RememberedFile[];
  readonly archived: Json;
  /** True for a package that was archived although it was not in order. */
  readonly isAsIs: boolean;
  /** True where the results may be of some members only, as of a PDF bound with `--only`; default: false. */
  readonly isExcerpt?: boolean;
  /** The status that the record gives; absent where there is no record. */
  readonly status?: string;
}

/** What came of it. */
export interface Reworked {
  /** To be laid over what was found before. */
  readonly found: Pick<
    Verification,
    'verdict' | 'differences' | 'compared' | 'damage' | 'remarks'
  >;
  /** The status that project.yaml gives; absent where it cannot be read. */
  readonly status?: string;
}

/** The folder in the world of memory that the archived files are placed in. */
const folder = 'archived';

/** Works the archived inputs with the present version and compares every figure with the archived ones. */
export function workAgain(rework: Rework): Reworked {
  const { world, files, archived, isAsIs, isExcerpt, status } = rework;
  const worked = workProject(carriedFolder(world, folder, files), folder);
  if (worked.project === undefined) return { found: notWorked(worked, isAsIs) };
  const now = worked.project.definition.status.value;
  if (status !== undefined && status !== now) {
    const message = `the record gives the status ${status}, and project.yaml ${now}`;
    return { found: { ...nothing('damaged'), damage: [{ message }] }, status: now };
  }
  const marks = isExcerpt === true ? marksIn(archived) : undefined;
  const computed = JSON.parse(
    resultsOf(worked, {
      ...stationsOf(archived),
      ...(marks === undefined ? {} : { marks }),
    }),
  ) as Json;
  const { differences, figures, greatest, remarks } = compareFigures(
    archived,
    computed,
  );
  return {
    status: now,
    found: {
      verdict: differences.length > 0 ? 'differs' : 'intact',
      differences,
      compared: { figures, greatest },
      damage: [],
      remarks: [...excerptRemarks(marks, worked), ...remarks],
    },
  };
}

function excerptRemarks(
  marks: readonly string[] | undefined,
  { members }: WorkedProject,
): readonly string[] {
  return marks === undefined || marks.length === members.length
    ? []
    : [`it holds ${marks.length} of the ${members.length} members of its project`];
}

/** A project that the present version cannot read: as it was archived, or because the program has changed. */
function notWorked({ diagnostics }: WorkedProject, isAsIs: boolean): Reworked['found'] {
  const error = diagnostics.find(({ severity }) => severity === 'error');
  const why =
    error === undefined ? 'an error' : `error ${error.code}: ${error.message}`;
  return isAsIs
    ? {
        ...nothing('not recomputed'),
        remarks: [`its inputs cannot be worked: ${why}`],
      }
    : {
        ...nothing('differs'),
        differences: [
          { member: '', what: 'the project', archived: 'given', computed: why },
        ],
      };
}

const nothing = (verdict: Verification['verdict']): Reworked['found'] => ({
  verdict,
  differences: [],
  damage: [],
  remarks: [],
});

/** As many stations as the archived results give; nothing where they give none. */
function stationsOf(archived: Json): { readonly stations?: number } {
  for (const member of itemsOf(keyOf(archived, 'members'))) {
    const entries = keyOf(member, 'results');
    for (const entry of isObject(entries) ? Object.values(entries) : []) {
      const count = itemsOf(keyOf(entry, 'stations')).length;
      if (count > 1) return { stations: count - 1 };
    }
  }
  return {};
}

/** The marks of the members that the archived results are of. */
function marksIn(archived: Json): readonly string[] {
  return itemsOf(keyOf(archived, 'members')).flatMap(
    (member) => textOf(member, 'mark') ?? [],
  );
}
