/** ` #` after a number: YAML takes the pound sign for the start of a comment. */
const poundAfterNumber = /(\d[\d.,]*) +#/;

/** The hint for `500 #` on the line of `offset`, or on the line where its bracket opened; undefined where that is not the slip. */
export function hashSlipHint(text: string, offset: number): string | undefined {
  // A slip lies close by; a window keeps a file full of faults from being read over and over.
  const lines = text.slice(Math.max(0, offset - 1000), offset).split('\n');
  const rest = text.slice(offset, offset + 1000).split('\n')[0] ?? '';
  const nearby = [(lines.at(-1) ?? '') + rest, ...lines.slice(-4, -1).reverse()];
  for (const line of nearby) {
    const found = poundAfterNumber.exec(line);
    if (found?.[1] !== undefined) return hashHint(found[1]);
  }
  return undefined;
}

/** What to write in place of `500 #`. */
export function hashHint(number: string): string {
  return `\` #\` starts a comment: write ${number.replaceAll(',', '')} lb, or "${number} #"`;
}

/** The hint for `1,250 lb` that YAML took apart into `1` and `250 lb`; undefined where the two do not read so. */
export function commaSlipHint(head: string, tail: string): string | undefined {
  if (!/^-?\d{1,3}$/.test(head) || !/^\d{3}(?!\d)/.test(tail)) return undefined;
  return `write ${head}${tail}, or "${head},${tail}"`;
}
