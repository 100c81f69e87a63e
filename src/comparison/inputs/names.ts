/**
 * Turns the names of one side into those of the later side, so that a thing that was only renamed
 * is told once and not at every place that speaks of it.
 */
export interface Names {
  readonly case: (mark: string) => string;
  readonly area: (name: string) => string;
  readonly section: (name: string) => string;
  readonly material: (name: string) => string;
  /** Of an assumption or a reference. */
  readonly id: (id: string) => string;
  readonly member: (mark: string) => string;
  /** A point of a member, both by the names of that side. */
  readonly point: (member: string, name: string) => string;
}

const same = (name: string): string => name;

/** The later side: every name stays. */
export const laterNames: Names = {
  case: same,
  area: same,
  section: same,
  material: same,
  id: same,
  member: same,
  point: (_, name) => name,
};

/** Names by a list of what was renamed; the others stay. */
export function translation(
  renamed: ReadonlyMap<string, string>,
): (name: string) => string {
  return (name) => renamed.get(name) ?? name;
}

/** A sum of cases (`D + 0.5L`) in the later names, spelled in one way whatever its order and blanks. */
export function sumIn(names: Names, written: string): string {
  return written
    .split('+')
    .map((term) => {
      const [, factor = '', mark = ''] =
        /^\s*(\d*\.?\d*)\s*\*?\s*(.*?)\s*$/u.exec(term) ?? [];
      return `${factor}${names.case(mark)}`;
    })
    .sort()
    .join('+');
}
