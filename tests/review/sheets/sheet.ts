import type { FindingKind, Verdict } from '../../../src/review/index.ts';

/** A worked sheet with the marks that a patient senior engineer would give it. */
export interface Sheet {
  readonly title: string;
  readonly member: string;
  readonly yaml: string;
  readonly marks: readonly ExpectedMark[];
}

/** The mark expected of a step. */
export interface ExpectedMark {
  readonly line: string;
  readonly verdict: Verdict;
  /** Every kind that is to be found; where two explain a slip equally, either. */
  readonly kinds: readonly (readonly FindingKind[])[];
}

/** What stands at the head of a sheet; flow YAML. */
export interface Head {
  readonly loads?: string;
  readonly names?: string;
  readonly signs?: string;
}

/**
 * A sheet from lines `claim [on PART] [for LOADS]: what is written ; conclusion ; … => verdict kinds`.
 * The claim is a sum, a value, `def` or `note`; a verdict left out is right. `resultant|lever-arm` is either
 * of two kinds that explain a slip equally.
 */
export function sheet(title: string, member: string, head: Head, lines: string): Sheet {
  const steps = lines
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map(stepOf);
  const about = Object.entries({ member, ...head }).map(([k, v]) => `${k}: ${v}\n`);
  const yaml = `${about.join('')}steps:\n${steps.map((one) => one.yaml).join('')}`;
  return { title, member, yaml, marks: steps.map(({ mark }) => mark) };
}

function stepOf(line: string): { readonly yaml: string; readonly mark: ExpectedMark } {
  const [body = ''] = line.split('=>');
  const [, head = '', rest = ''] = /^(.+?):(?:\s+(.*))?$/u.exec(body.trim()) ?? [];
  const [, claim = '', part, loads] =
    /^(.+?)(?: on (.+?))?(?: for (.+))?$/u.exec(head) ?? [];
  const [write = '', ...so] = rest.split(';').map((one) => one.trim());
  const quoted = (text: string): string => JSON.stringify(text);
  const entries = [
    ...claimOf(claim),
    ...(part === undefined ? [] : [`part: ${part}`]),
    ...(loads === undefined ? [] : [`loads: ${loads}`]),
    ...writingOf(claim, quoted(write)),
    ...(so.length === 0 ? [] : [`so: [ ${so.map(quoted).join(', ')} ]`]),
  ];
  return {
    yaml: `  - { ${entries.join(', ')} }\n`,
    mark: markOf(line),
  };
}

function markOf(line: string): ExpectedMark {
  const [, marks = 'right'] = line.split('=>');
  const [verdict = 'right', ...kinds] = marks.trim().split(/\s+/u);
  return {
    line,
    verdict: verdict as Verdict,
    kinds: kinds.map((one) => one.split('|') as FindingKind[]),
  };
}

function writingOf(claim: string, quoted: string): readonly string[] {
  if (quoted === '""') return [];
  return [`${claim === 'note' ? 'note' : 'write'}: ${quoted}`];
}

function claimOf(claim: string): readonly string[] {
  if (claim === 'def' || claim === 'note') return [];
  return [/^(?:moments|forces)\b/u.test(claim) ? `sum: ${claim}` : `value: ${claim}`];
}
