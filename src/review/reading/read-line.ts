import { dimensions, pureUnit } from '../../units/index.ts';
import { splitDirection } from './direction-words.ts';
import { parseChain, type SlashReading } from './parse-chain.ts';
import { tokensOf, type Token } from './tokens.ts';
import type { ReadLine, WrittenLine } from './written.ts';

/** No line of a calculation is longer, in characters. */
export const longestLine = 2000;

/**
 * Reads a line as somebody wrote it: numbers with units, symbols, `+ - * / ( ) ^`, functions,
 * multiplication without a sign, chained equals, a direction in words at the end. `names` are the
 * worker's declared symbols. The head of a sum (`ΣM_A =`) is taken off. Never throws.
 */
export function readLine(text: string, names: readonly string[]): ReadLine {
  if (text.length > longestLine) {
    return {
      fault: {
        kind: 'syntax',
        message: `the line is too long: ${text.length} characters, and ${longestLine} are read`,
        start: longestLine,
        end: text.length,
      },
    };
  }
  const { text: equation, direction } = splitDirection(text, names);
  const split = tokensOf(equation, names);
  if (split.fault !== undefined) return { fault: split.fault };
  const tokens = withoutHead(split.tokens, names);
  const read = (slash: SlashReading): ReturnType<typeof parseChain> =>
    parseChain(tokens, equation.length, slash);
  const first = read('last');
  if (first.fault !== undefined) return { fault: first.fault };
  const lineOf = (links: WrittenLine['links']): WrittenLine => ({
    text,
    links,
    ...(direction === undefined ? {} : { direction }),
  });
  const others = tokens.some((token) => token.kind === 'sign' && token.sign === '/')
    ? [read('first'), parseChain(apartFromUnits(tokens), equation.length, 'first')]
    : [];
  const readings = [first, ...others].flatMap(({ links }) =>
    links === undefined ? [] : [lineOf(links)],
  );
  return { readings: readings.length > 1 ? different(readings) : readings };
}

// The ways of reading a slash often come to the same.
function different(lines: readonly WrittenLine[]): readonly WrittenLine[] {
  const byShape = new Map<string, WrittenLine>();
  for (const line of lines) {
    const shape = JSON.stringify(line.links);
    if (!byShape.has(shape)) byShape.set(shape, line);
  }
  return [...byShape.values()];
}

/** `ΣM_A = …`, `sum F_y = …`: the head names the sum, and is no term of it. */
function withoutHead(
  tokens: readonly Token[],
  names: readonly string[],
): readonly Token[] {
  const equals = tokens.findIndex(
    (token) => token.kind === 'sign' && token.sign === '=',
  );
  const [first] = tokens;
  if (equals < 1 || equals > 3 || first?.kind !== 'name') return tokens;
  const isHead = /^(?:Σ|sum$)/iu.test(first.name) && !names.includes(first.name);
  return isHead ? tokens.slice(equals + 1) : tokens;
}

/** Numbers behind a slash cut off from their units, so that `20/2 ft` is (20/2) ft. */
function apartFromUnits(tokens: readonly Token[]): readonly Token[] {
  return tokens.flatMap((token, index): readonly Token[] => {
    const before = tokens[index - 1];
    const isUnder = before?.kind === 'sign' && before.sign === '/';
    if (!isUnder || token.kind !== 'number' || token.isBare || token.quantity.compound)
      return [token];
    const { unit, si } = token.quantity;
    const { dimension } = unit;
    const count = si / unit.inSi;
    const bare = {
      ...token.quantity,
      si: count,
      dimension: dimensions.pure,
      unit: pureUnit,
    };
    const one = { ...token.quantity, si: unit.inSi, dimension, text: '1' };
    const { start, end } = token;
    return [
      { kind: 'number', quantity: bare, isBare: true, lastPlace: 0, start, end },
      { kind: 'unit', quantity: one, start, end },
    ];
  });
}
