import type { DerivedMember } from '../../../src/derivation/index.ts';
import { workMembers } from '../../../src/derivation/index.ts';
import type { Project } from '../../../src/project/index.ts';
import { readWorked } from '../../../src/project/kinds/worked/read-worked.ts';
import { checkWorked, type MarkedStep } from '../../../src/review/index.ts';
import {
  markingContext,
  type MarkingContext,
} from '../../../src/review/marking-context.ts';
import type { BeamStructure } from '../../../src/statics/index.ts';
import { folderOf } from '../../support/beam-file.ts';
import { readFolder } from '../../support/folder.ts';

/** A random beam ready to have lines marked against it. */
export interface LineMarker {
  readonly context: MarkingContext;
  readonly mark: string;
  /** Marks a file of steps, given from `names:` on. */
  readonly steps: (text: string) => readonly MarkedStep[];
}

/** What marks lines of a beam; undefined where it is none that can be worked. */
export function lineMarker(structure: BeamStructure): LineMarker | undefined {
  const { value: project } = readFolder(folderOf(structure));
  const mark = structure.loads[0]?.case;
  const [work] = project === undefined ? [] : workMembers(project, []);
  if (project === undefined || mark === undefined || work?.kind !== 'worked')
    return undefined;
  // Marking reads the worked member alone; telling its derivation would take most of the time.
  const members = [{ kind: 'derived', work: work.work } as DerivedMember];
  const context = markingContext(project, work.work, mark);
  if (context === undefined) return undefined;
  return { context, mark, steps: (text) => marked(project, members, text) };
}

function marked(
  project: Project,
  members: readonly DerivedMember[],
  text: string,
): readonly MarkedStep[] {
  const worked = readWorked({ path: 'worked/a.yaml', text, sha256: '' }, 'si');
  const [file] = checkWorked({ ...project, worked: [worked] }, members);
  if (file === undefined || file.fault !== undefined)
    throw new Error(file?.fault?.message ?? 'no file');
  return file.steps;
}
