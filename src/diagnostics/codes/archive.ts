import type { CodeEntry } from '../code-entry.ts';

/** Codes about packages that were issued: bags, bound PDFs and what is kept of them. */
export type ArchiveCode =
  | 'archive-exists'
  | 'archived-as-is'
  | 'name-not-kept'
  | 'not-a-package'
  | 'not-registered'
  | 'package-unreadable'
  | 'package-without-inputs'
  | 'revision-incomplete'
  | 'signed-adds-nothing'
  | 'signed-not-compared'
  | 'signed-unreadable'
  | 'superseded-not-said';

/** Their entries. */
export const archiveCodes: Readonly<Record<ArchiveCode, CodeEntry>> = {
  'not-a-package': {
    meaning:
      'A path leads to no project folder, no bag and no bound PDF. What a file is, is seen from its content, not from its name.',
    mend: 'Name the folder that holds project.yaml, a bag made by `sumzero archive`, or a package.pdf.',
  },
  'not-registered': {
    meaning:
      'A project, bag or PDF could not be taken into the register, because what it says of itself cannot be read.',
    mend: 'Mend what the message names; `sumzero bind` tells all that is wrong with a project.',
  },
  'package-unreadable': {
    meaning:
      'A bag or a PDF is damaged, was not made by this program, or holds what could do harm when it is read.',
    mend: 'Get an undamaged copy; `sumzero verify` tells what is wrong with a bag or a bound PDF.',
  },
  'package-without-inputs': {
    meaning:
      'A bag or a PDF carries no definition files, so that its members cannot be worked again.',
    mend: 'Use the project folder, or a bag or PDF that was bound by this program.',
  },
  'revision-incomplete': {
    meaning:
      'A package is archived as a revision, and its record of revisions leaves something open. A row of it holds its mark, date, note (what was changed), reason, who prepared and who checked it, and the sheets affected.',
    mend: 'Complete the rows under `revisions` in project.yaml, or say --as-is: what is missing is then written on the cover.',
    example: {
      wrong: 'revisions:\n  - { mark: A, date: 2031-03-14 }',
      right:
        'revisions:\n  - { mark: A, date: 2031-03-14, note: First issue, reason: For review, prepared: AQ, checked: RT, sheets: all }',
    },
  },
  'archive-exists': {
    meaning:
      'There is a file where the bag was to go. An issued bag is never overwritten or changed.',
    mend: 'Give what is issued anew a row of its own under `revisions` in project.yaml, with a new mark; its bag then gets a name of its own.',
  },
  'archived-as-is': {
    meaning:
      'A package was archived although it is not in order, because --as-is was said. The reason stands on its cover and in its record.',
    mend: 'Put the package in order and issue it as a new revision.',
  },
  'name-not-kept': {
    meaning:
      'A file of the project has a name that a bag must not hold: it cannot be shown, or is the same as another on a disk that ignores capitals.',
    mend: 'Rename the file, in plain letters that differ by more than capitals.',
  },
  'signed-unreadable': {
    meaning: 'The signed PDF is not there, cannot be read, or is no PDF.',
    mend: 'Name the PDF as it came from signing, after --signed.',
  },
  'signed-adds-nothing': {
    meaning:
      'The PDF given as signed is the bound one to the byte, so that it bears no signature.',
    mend: 'Sign package.pdf first and name the signed copy after --signed; seals of paper copies need none.',
  },
  'signed-not-compared': {
    meaning:
      'A signed PDF is kept beside the bound one and does not begin with its bytes, so that nothing tells whether it shows the same sheets. Signing that only adds to the end of the file leaves its start as it was.',
    mend: 'Sign the package.pdf of this very revision, with a tool that adds an incremental signature; otherwise compare the two by eye.',
  },
  'superseded-not-said': {
    meaning:
      'The record of revisions has earlier rows, but project.yaml does not say which package this one supersedes.',
    mend: 'Write `supersedes: { number: …, revision: …, bag: … }` under `project`.',
    example: {
      wrong: 'project: { number: "2031-014", title: Footbridge }',
      right:
        'project:\n  number: "2031-014"\n  title: Footbridge\n  supersedes: { number: "2031-014", revision: "-", bag: issued/2031-014-0.zip }',
    },
  },
};
