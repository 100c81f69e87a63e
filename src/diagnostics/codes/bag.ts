import type { CodeEntry } from '../code-entry.ts';

/** Codes of files that should be bags of an issued package. */
export type BagCode = 'bag-unreadable' | 'not-a-bag' | 'bag-refused';

/** Their entries. */
export const bagCodes: Readonly<Record<BagCode, CodeEntry>> = {
  'bag-unreadable': {
    meaning:
      'A bag is not there, the disk withholds it, or its zip is cut short or damaged.',
    mend: 'Check the path; take the bag from its place of keeping, or from a copy, once more.',
  },
  'not-a-bag': {
    meaning: 'A file is no bag: no zip at all, or a zip without bagit.txt at its root.',
    mend: 'Name the zip that `sumzero archive` wrote. A zip of a bag’s folder is none: pack what lies in the folder.',
  },
  'bag-refused': {
    meaning:
      'A bag holds what could do harm or deceive: names that lead out of it, links, sizes that lie, files that unpack without end.',
    mend: 'Do not unpack it. Ask whoever sent it for the bag as it was issued.',
  },
};
