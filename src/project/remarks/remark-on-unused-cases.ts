import type { LoadsFile } from '../loads-file/loads-file.ts';
import type { OpenFile } from '../reading.ts';
import type { ReadFolder } from './read-folder.ts';

/** Remarks on cases of which no member carries a load. */
export function remarkOnUnusedCases(
  { members }: ReadFolder,
  { parts, reading }: OpenFile<LoadsFile>,
): void {
  const used = new Set(
    members.flatMap(({ definition }) => [
      ...(definition?.loads ?? []).map((load) => load.case),
      ...(definition?.temperatures ?? []).map((one) => one.case),
      ...(definition?.trains ?? []).map((one) => one.case),
      ...(definition?.supports ?? []).map((support) => support.settlement?.case),
    ]),
  );
  for (const { name } of parts.cases ?? [])
    if (!used.has(name.value))
      reading.report({
        code: 'case-unused',
        severity: 'remark',
        message: `no member carries a load of case ${name.value}`,
        span: name.span,
        hints: ['leave it if that is meant; its results are 0'],
      });
}
