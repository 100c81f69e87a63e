import type { Project, WorkedDefinition } from '../../project/index.ts';
import { digest } from '../../world/index.ts';
import { textField, type Entry } from './entry.ts';
import type { Names } from './names.ts';

/** Worked steps, by file; what was written counts, not how the file is laid out. */
export function workedEntries({ worked }: Project, names: Names): readonly Entry[] {
  return worked.map((one) => ({
    part: 'worked',
    key: one.file,
    what: `worked steps ${one.file}`,
    ...(one.member === undefined
      ? {}
      : { whole: `for ${names.member(one.member.text)}` }),
    sort: saidIn(one, names),
    rekeyed: { kind: 'renamed', name: one.file },
    fields: [],
  }));
}

/** All that a worked file says, without its places. */
function saidIn(one: WorkedDefinition, names: Names): string {
  const { member, loads, prepared, signs, steps, replies } = one;
  // A file that could not be read says its text.
  if (one.fault !== undefined) return one.text;
  const said = {
    member: member === undefined ? undefined : names.member(member.text),
    loads,
    prepared,
    signs,
    names: one.names.map(({ name, means }) => [name, means]).sort(),
    steps,
    replies,
  };
  return JSON.stringify(said, (key, value: unknown) =>
    isPlace(key) ? undefined : value,
  );
}

const isPlace = (key: string): boolean => key === 'span' || key === 'file';

/** Pictures by path, told by name alone. */
export function pictureEntries({ images }: Project): readonly Entry[] {
  return Object.entries(images).map(([path, bytes]) => ({
    part: 'pictures',
    key: path,
    what: `picture ${path}`,
    sort: digest(bytes),
    rekeyed: { kind: 'renamed', name: path },
    fields: [],
  }));
}

/** Templates of the project's own by file name, told by name alone. */
export function templateEntries({ templates }: Project): readonly Entry[] {
  return Object.entries(templates).map(([name, text]) => ({
    part: 'templates',
    key: name,
    what: `template ${name}`,
    sort: text,
    fields: [],
  }));
}

/** theme.yaml, one entry a value. */
export function themeEntries({ theme }: Project): readonly Entry[] {
  return leavesOf(theme, []).map(({ path, text }) => ({
    part: 'theme',
    key: path,
    what: `theme ${path}`,
    whole: text,
    fields: [textField(`theme ${path}`, text)],
  }));
}

function leavesOf(
  value: unknown,
  path: readonly string[],
): readonly { readonly path: string; readonly text: string }[] {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    return Object.entries(value).flatMap(([key, inner]) =>
      leavesOf(inner, [...path, key]),
    );
  }
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return [{ path: path.join('.'), text }];
}
