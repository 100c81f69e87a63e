import { deriveMembers, workMembers } from '../../../src/derivation/index.ts';
import {
  checkWorked,
  type MarkedFile,
  type MarkedStep,
} from '../../../src/review/index.ts';
import { combinationsFor } from '../../../src/standards/index.ts';
import { soundFolder } from '../../support/folder.ts';
import type { ExpectedMark, Sheet } from './sheet.ts';

/** A sheet with the marks that it was given beside those expected. */
export interface SheetMarks {
  readonly file: MarkedFile;
  readonly steps: readonly {
    readonly sheet: string;
    readonly expected: ExpectedMark;
    readonly found: MarkedStep;
  }[];
}

/** Marks worked files, given by path, against members given as texts by mark. */
export function markFiles(
  members: Readonly<Record<string, string>>,
  worked: Readonly<Record<string, string | Uint8Array>>,
  rest: Readonly<Record<string, string>> = {},
): readonly MarkedFile[] {
  const project = soundFolder({
    ...Object.fromEntries(
      Object.entries(members).map(([mark, text]) => [`members/${mark}.yaml`, text]),
    ),
    ...worked,
    ...rest,
  });
  const { combinations } = combinationsFor({
    ...project.loads,
    standards: project.definition.standards,
  });
  return checkWorked(
    project,
    deriveMembers(project, workMembers(project, combinations)),
  );
}

/** Marks sheets, each against its member; `rest` is what else stands in the folder, by path. */
export function markSheets(
  members: Readonly<Record<string, string>>,
  sheets: readonly Sheet[],
  rest: Readonly<Record<string, string>> = {},
): readonly SheetMarks[] {
  const pathOf = (index: number): string =>
    `worked/${String(index).padStart(4, '0')}.yaml`;
  const files = markFiles(
    members,
    Object.fromEntries(sheets.map(({ yaml }, index) => [pathOf(index), yaml])),
    rest,
  );
  return sheets.map(({ title, marks }, index) => {
    const file = files.find((one) => one.file === pathOf(index));
    if (file?.steps.length !== marks.length)
      throw new Error(`${title}: ${file?.fault?.message ?? 'steps are lost'}`);
    const steps = marks.map((expected, at) => ({
      sheet: title,
      expected,
      found: file.steps[at]!,
    }));
    return { file, steps };
  });
}
