/** Codes of faults that lie outside the definition files. */
export const programCodes: { readonly 'write-failed': CodeText } = {
  'write-failed': {
    meaning: 'A file could not be written where it was asked for.',
    mend: 'Choose another place with -o, or free the space or the permission that the message names.',
  },
};

interface CodeText {
  readonly meaning: string;
  readonly mend: string;
}
