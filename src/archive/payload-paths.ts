/** Where the files of an issued package lie inside its bag; what ends with a slash is a folder. */
export const payload = {
  package: 'data/package.pdf',
  signed: 'data/package.signed.pdf',
  checkPrints: 'data/check-prints.pdf',
  results: 'data/results.json',
  record: 'data/record.json',
  definition: 'data/definition/',
  licences: 'data/licences/',
} as const;
