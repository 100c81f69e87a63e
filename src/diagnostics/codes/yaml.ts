import type { CodeEntry } from '../code-entry.ts';

/** Codes of faults in the way a file is written, before anything in it means anything. */
export type YamlCode =
  | 'yaml-syntax'
  | 'yaml-tab'
  | 'yaml-empty'
  | 'yaml-several-documents'
  | 'yaml-alias'
  | 'yaml-merge'
  | 'yaml-tag'
  | 'yaml-key'
  | 'yaml-too-deep'
  | 'duplicate-key'
  | 'comma-in-number'
  | 'pound-sign';

/** Their entries. */
export const yamlCodes: Readonly<Record<YamlCode, CodeEntry>> = {
  'yaml-syntax': {
    meaning: 'The file is not well-formed YAML.',
    mend: 'Mend the place that is named: a colon, a bracket, a quote or the indent.',
    example: {
      wrong: 'points: { A: 0 ft, B: 6 ft',
      right: 'points: { A: 0 ft, B: 6 ft }',
    },
  },
  'yaml-tab': {
    meaning: 'A tab stands where YAML wants spaces.',
    mend: 'Indent with spaces.',
    example: {
      wrong: 'project:\n	title: Weir crossing',
      right: 'project:\n  title: Weir crossing',
    },
  },
  'yaml-empty': {
    meaning: 'The file holds no definition.',
    mend: 'Write the definition, or take the file away.',
  },
  'yaml-several-documents': {
    meaning: 'The file holds more than one YAML document.',
    mend: 'Write one definition a file, without lines of `---` between.',
    example: { wrong: 'mark: B1\n---\nmark: B2', right: 'mark: B1' },
  },
  'yaml-alias': {
    meaning:
      'An alias names nothing, stands inside itself, or unfolds to far too much.',
    mend: 'Write the values out instead of naming them by `*`.',
    example: { wrong: 'at: *here', right: 'at: B' },
  },
  'yaml-merge': {
    meaning: '`<<` stands as a key; YAML 1.2 merges nothing.',
    mend: 'Write the entries out.',
    example: { wrong: 'B: { <<: *common, case: L }', right: 'B: { case: L }' },
  },
  'yaml-tag': {
    meaning: 'A tag such as `!name` stands in the file; tags mean nothing here.',
    mend: 'Take the tag out, or quote the text.',
    example: { wrong: 'title: !big Weir crossing', right: 'title: Weir crossing' },
  },
  'yaml-key': {
    meaning: 'A key is a list, a map or an alias.',
    mend: 'Write keys as plain words or texts.',
    example: { wrong: '? [A, B]\n: pin', right: 'A: pin\nB: pin' },
  },
  'yaml-too-deep': {
    meaning: 'The file nests deeper than it can be read.',
    mend: 'Definitions nest a few levels only; look for brackets that are not closed.',
  },
  'duplicate-key': {
    meaning: 'A key stands twice in one map.',
    mend: 'Keep one of the two, or give one another name.',
    example: {
      wrong: 'points: { A: 0 ft, B: 6 ft, B: 9 ft }',
      right: 'points: { A: 0 ft, B: 6 ft, C: 9 ft }',
    },
  },
  'comma-in-number': {
    meaning: 'A comma inside brackets or braces cut a number in two.',
    mend: 'Leave the comma out, or put the value in quotes.',
    example: {
      wrong: '- { case: L, point: 1,250 lb, at: B }',
      right: '- { case: L, point: "1,250 lb", at: B }',
    },
  },
  'pound-sign': {
    meaning: 'The pound sign after a number began a comment.',
    mend: 'Write lb, or put the value in quotes.',
    example: { wrong: 'point: 500 #', right: 'point: 500 lb' },
  },
};
