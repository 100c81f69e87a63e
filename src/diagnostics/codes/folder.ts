import type { CodeEntry } from '../code-entry.ts';

/** Codes of faults of the project folder and its files. */
export type FolderCode =
  | 'not-a-folder'
  | 'no-project-file'
  | 'no-members'
  | 'file-unreadable'
  | 'file-too-large'
  | 'file-not-text'
  | 'file-missing'
  | 'file-not-read'
  | 'path-outside-folder'
  | 'not-a-picture'
  | 'not-worked-yet';

/** Their entries. */
export const folderCodes: Readonly<Record<FolderCode, CodeEntry>> = {
  'not-a-folder': {
    meaning: 'The path that was given is no folder.',
    mend: 'Give the path of the folder that holds project.yaml.',
  },
  'no-project-file': {
    meaning: 'The folder holds no project.yaml.',
    mend: 'Write one with a title and the units, or give another folder.',
  },
  'no-members': {
    meaning: 'The folder holds no member to calculate.',
    mend: 'Write one file a member into members/, its name ending in .yaml.',
  },
  'file-unreadable': {
    meaning: 'A file of the folder could not be read.',
    mend: 'Mend its permissions, or take it away.',
  },
  'file-too-large': {
    meaning: 'A file of the folder holds more than 1 MB.',
    mend: 'Make it smaller: split definitions, scale pictures down.',
  },
  'file-not-text': {
    meaning: 'A definition file is no text in UTF-8.',
    mend: 'Save it from a text editor as UTF-8.',
  },
  'file-missing': {
    meaning: 'A file that a definition names is not in the folder.',
    mend: 'Put it there, or mend the name.',
    example: { wrong: 'logo: images/mark.png', right: 'logo: images/office-mark.png' },
  },
  'file-not-read': {
    meaning: 'A file lies where definitions are read, and is not read itself.',
    mend: 'Rename it so that it ends in .yaml, move it, or take it away.',
  },
  'path-outside-folder': {
    meaning: 'A path leads out of the project folder.',
    mend: 'Keep what the package needs inside the folder, and name it from there.',
    example: { wrong: 'logo: ../logos/office.png', right: 'logo: images/office.png' },
  },
  'not-a-picture': {
    meaning: 'The logo is no PNG or JPEG.',
    mend: 'Save the picture as PNG or JPEG; the name alone does not make it one.',
  },
  'not-worked-yet': {
    meaning: 'A folder holds something that this version leaves aside.',
    mend: 'Nothing needs to be done; the rest of the package is made.',
  },
};
