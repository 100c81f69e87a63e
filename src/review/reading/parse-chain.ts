import type { Token } from './tokens.ts';
import type { ReadingFault, Written } from './written.ts';

/** How a slash is read where what follows it goes on without a sign: `P/2L`. */
export type SlashReading = 'first' | 'last';

/** Sides of the equals signs, or where reading stopped. */
export type Chain =
  | { readonly links: readonly Written[]; readonly fault?: undefined }
  | { readonly fault: ReadingFault; readonly links?: undefined };

/** Brackets within brackets beyond this depth are nobody's calculation. */
const deepest = 60;

interface Cursor {
  readonly tokens: readonly Token[];
  readonly slash: SlashReading;
  readonly length: number;
  at: number;
  depth: number;
}

/** Thrown inside this file to leave the descent, and caught at its door. */
class Stop extends Error {
  readonly fault: ReadingFault;
  constructor(fault: ReadingFault) {
    super(fault.message);
    this.fault = fault;
  }
}

/**
 * Reads words as sums on either side of equals signs: recursive descent over
 * chain = sum { "=" sum }, sum = [sign] term { sign term }, term = factor { ["*" | "/"] factor },
 * factor = base { "^" exponent }. An empty last side (`… =`) is a fault. `length` is the text's.
 */
export function parseChain(
  tokens: readonly Token[],
  length: number,
  slash: SlashReading,
): Chain {
  const cursor: Cursor = { tokens, slash, length, at: 0, depth: 0 };
  try {
    const links = [parseSum(cursor)];
    while (takeSign(cursor, '=')) links.push(parseSum(cursor));
    const next = cursor.tokens[cursor.at];
    if (next !== undefined) stop(cursor, `${wordsOf(next)} cannot stand here`);
    return { links };
  } catch (error) {
    if (error instanceof Stop) return { fault: error.fault };
    throw error;
  }
}

function stop(cursor: Cursor, message: string): never {
  const token = cursor.tokens[cursor.at];
  const { start, end } = token ?? { start: cursor.length, end: cursor.length };
  throw new Stop({ kind: 'syntax', message, start, end });
}

function wordsOf(token: Token): string {
  switch (token.kind) {
    case 'sign':
      return `\`${token.sign}\``;
    case 'name':
      return `\`${token.name}\``;
    case 'function':
      return `\`${token.of}\``;
    case 'unit':
      return 'a unit';
    case 'number':
      return 'a number';
  }
}

function signAt(cursor: Cursor): string | undefined {
  const token = cursor.tokens[cursor.at];
  return token?.kind === 'sign' ? token.sign : undefined;
}

function takeSign(cursor: Cursor, sign: string): boolean {
  if (signAt(cursor) !== sign) return false;
  cursor.at += 1;
  return true;
}

interface SignedTerm {
  readonly sign: 1 | -1;
  readonly of: Written;
}

function parseSum(cursor: Cursor): Written {
  const first = parseSigned(cursor);
  const terms: SignedTerm[] = [first];
  while (isPlusOrMinus(cursor)) terms.push(parseSigned(cursor));
  if (terms.length === 1 && first.sign === 1) return first.of;
  const end = terms.at(-1)?.of.end ?? first.of.end;
  return { kind: 'sum', terms, start: first.of.start, end };
}

function isPlusOrMinus(cursor: Cursor): boolean {
  return signAt(cursor) === '+' || signAt(cursor) === '-';
}

function parseSigned(cursor: Cursor): SignedTerm {
  let sign: 1 | -1 = 1;
  let sawSign = false;
  // `+ -` and `--` happen in hand work; each minus turns the term once.
  while (isPlusOrMinus(cursor)) {
    if (signAt(cursor) === '-') sign = sign === 1 ? -1 : 1;
    cursor.at += 1;
    sawSign = true;
  }
  if (cursor.at >= cursor.tokens.length)
    stop(
      cursor,
      sawSign ? 'a term is missing after the sign' : 'something is missing here',
    );
  return { sign, of: parseTerm(cursor) };
}

function parseTerm(cursor: Cursor): Written {
  let product = parseRun(cursor);
  for (;;) {
    const sign = signAt(cursor);
    if (sign !== '*' && sign !== '/') return product;
    cursor.at += 1;
    const { start } = product;
    const next = parseRun(cursor, sign);
    product =
      sign === '/'
        ? { kind: 'quotient', over: product, under: next, start, end: next.end }
        : { kind: 'product', factors: [product, next], start, end: next.end };
    if (cursor.slash === 'first' || sign === '*') {
      while (startsFactor(cursor)) product = times(product, parseFactor(cursor));
    }
  }
}

function times(one: Written, other: Written): Written {
  const factors = one.kind === 'product' ? [...one.factors, other] : [one, other];
  return { kind: 'product', factors, start: one.start, end: other.end };
}

/** Factors that follow one another without a sign; behind a slash read first, one of them only. */
function parseRun(cursor: Cursor, after?: '*' | '/'): Written {
  let product = parseFactor(cursor);
  if (after === '/' && cursor.slash === 'first') return product;
  while (startsFactor(cursor)) product = times(product, parseFactor(cursor));
  return product;
}

function startsFactor(cursor: Cursor): boolean {
  const token = cursor.tokens[cursor.at];
  if (token === undefined) return false;
  return token.kind === 'sign' ? token.sign === '(' : true;
}

function parseFactor(cursor: Cursor): Written {
  let base = parseBase(cursor);
  while (takeSign(cursor, '^')) {
    const isMinus = takeSign(cursor, '-');
    const open = takeSign(cursor, '(');
    const token = cursor.tokens[cursor.at];
    if (token?.kind !== 'number' || !token.isBare)
      return stop(cursor, 'an exponent must be a plain number');
    cursor.at += 1;
    if (open && !takeSign(cursor, ')')) stop(cursor, 'a bracket is not closed');
    const exponent = (isMinus ? -1 : 1) * token.quantity.si;
    base = { kind: 'power', base, exponent, start: base.start, end: token.end };
  }
  return base;
}

function parseBase(cursor: Cursor): Written {
  const token = cursor.tokens[cursor.at];
  if (token === undefined) return stop(cursor, 'something is missing here');
  const { start, end } = token;
  switch (token.kind) {
    case 'number': {
      const { quantity, isBare, lastPlace } = token;
      cursor.at += 1;
      return { kind: 'number', quantity, isBare, lastPlace, start, end };
    }
    case 'unit':
      cursor.at += 1;
      return {
        kind: 'number',
        quantity: token.quantity,
        isBare: false,
        lastPlace: 0,
        start,
        end,
      };
    case 'name':
      cursor.at += 1;
      return { kind: 'name', name: token.name, start, end };
    case 'function':
      return parseCall(cursor, token.of, start);
    case 'sign':
      if (token.sign !== '(')
        return stop(cursor, `${wordsOf(token)} cannot stand here`);
      return parseBracket(cursor);
  }
}

function parseBracket(cursor: Cursor): Written {
  const opened = cursor.tokens[cursor.at];
  cursor.at += 1;
  cursor.depth += 1;
  if (cursor.depth > deepest) stop(cursor, 'the brackets nest too deep');
  const inside = parseSum(cursor);
  cursor.depth -= 1;
  const closed = cursor.tokens[cursor.at];
  if (!takeSign(cursor, ')')) stop(cursor, 'a bracket is not closed');
  return {
    ...inside,
    start: opened?.start ?? inside.start,
    end: closed?.end ?? inside.end,
  };
}

function parseCall(
  cursor: Cursor,
  of: Extract<Written, { kind: 'call' }>['of'],
  start: number,
): Written {
  cursor.at += 1;
  const argument = parseFactor(cursor);
  return { kind: 'call', of, argument, start, end: argument.end };
}
