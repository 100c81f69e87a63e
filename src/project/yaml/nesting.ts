/**
 * The offset at which a YAML text nests deeper than `limit`; undefined where it never does. Depth
 * is measured generously: brackets and braces that stand open (those in quotes too), steps of the
 * indent, and `- - -` on one line, added up.
 *
 * The YAML parser calls itself once a level. Where its stack runs out it throws at best; at worst
 * the engine is just then compiling a regular expression and takes the whole process along. So a
 * text is measured before it is parsed.
 */
export function tooDeepAt(text: string, limit: number): number | undefined {
  const indents: number[] = [];
  let open = 0;
  for (const found of text.matchAll(/[^\r\n]+/g)) {
    const line = found[0];
    const indent = line.search(/\S/);
    if (indent < 0) continue;
    while ((indents.at(-1) ?? -1) >= indent) indents.pop();
    indents.push(indent);
    const stacked = indicatorsOf(line);
    if (indents.length + stacked + open > limit) return found.index + indent;
    for (const sign of line.matchAll(/[[\]{}]/g)) {
      open = sign[0] === '[' || sign[0] === '{' ? open + 1 : Math.max(0, open - 1);
      if (indents.length + stacked + open > limit) return found.index + sign.index;
    }
  }
  return undefined;
}

/** How many entries of lists and maps a line opens one inside the other: `- - ? a` opens three. */
function indicatorsOf(line: string): number {
  const run = /^(?:\s*[-?:](?=\s))*/.exec(line)?.[0] ?? '';
  return run.replace(/\s/g, '').length;
}
