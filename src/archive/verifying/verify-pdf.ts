import type { RememberedFile } from '../../world/index.ts';
import type { Damage, Verification } from '../verification.ts';
import { keyOf, readJson, textOf, type Json } from './json.ts';
import { openPdf, type FoundPdf } from './open-pdf.ts';
import type { Subject } from './subject.ts';
import { workAgain } from './work-again.ts';

/** What no PDF can prove by itself. */
const withoutBag =
  'a PDF alone has no digest of its pages: that they are as they were issued is for its bag or a signature to prove';

/** Verifies a bound PDF on its own: whether it can be read to its last object, its attachments by their own check sums, and its figures by working them again. */
export async function verifyPdf(subject: Subject): Promise<Verification> {
  const { world, path, sha256, program } = subject;
  const about = { path, sha256, kind: 'pdf', differences: [] } as const;
  const pdf = await openPdf(world, path);
  if ('problem' in pdf)
    return {
      ...about,
      verdict: 'unreadable',
      damage: [{ message: pdf.problem }],
      remarks: [],
    };
  const said = { ...about, ...saidOf(pdf, program.version) };
  const damaged = (damage: readonly Damage[]): Verification => ({
    ...said,
    verdict: 'damaged',
    damage,
    remarks: [],
  });
  if (pdf.damage.length > 0) return damaged(pdf.damage);
  const results = resultsOf(pdf);
  if ('message' in results) return damaged([results]);
  const { found: worked, status } = workAgain({
    world,
    files: inputsOf(pdf),
    archived: results.value,
    isAsIs: false,
    isExcerpt: true,
  });
  return {
    ...said,
    ...worked,
    identity: { ...identityOf(results.value), status: status ?? null },
    remarks: [withoutBag, ...worked.remarks],
  };
}

const inputsOf = ({ attachments }: FoundPdf): readonly RememberedFile[] =>
  attachments
    .filter(({ name }) => name !== 'results.json')
    .map(({ name, bytes }) => ({ path: name, bytes }));

function resultsOf({ attachments }: FoundPdf): { readonly value: Json } | Damage {
  const found = attachments.find(({ name }) => name === 'results.json');
  const path = 'results.json';
  if (found === undefined)
    return { path, message: 'it does not travel inside the PDF' };
  const json = readJson(found.bytes);
  return 'problem' in json
    ? { path, message: `it is no JSON: ${json.problem}` }
    : { value: json.value };
}

function identityOf(
  results: Json,
): Omit<NonNullable<Verification['identity']>, 'status'> {
  const project = keyOf(results, 'project');
  return {
    number: textOf(project, 'number') ?? null,
    title: textOf(project, 'title') ?? '',
    revision: textOf(project, 'revision') ?? null,
  };
}

/** The version that the file says it was bound by; nothing where it says none. */
function saidOf(
  { producer }: FoundPdf,
  present: string,
): Pick<Verification, 'versions'> {
  const issued = /^sumzero (\S+)$/u.exec(producer)?.[1];
  return issued === undefined ? {} : { versions: { issued, present } };
}
