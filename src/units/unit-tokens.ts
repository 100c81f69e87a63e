import { fromSuperscript } from './superscript.ts';

/** A word of a written unit: a symbol with its power, or a sign between; offsets into the text. */
export interface UnitToken {
  readonly kind: 'factor' | 'times' | 'slash' | 'open' | 'close' | 'one' | 'stray';
  readonly start: number;
  readonly end: number;
  /** Of a factor: the symbol as written. */
  readonly symbol: string;
  /** Of a factor: its power, 1 where none is written. */
  readonly power: number;
}

const patterns: readonly (readonly [kind: UnitToken['kind'], pattern: RegExp])[] = [
  [
    'factor',
    /^(°[CF]?(?!\p{L})|#|\p{L}+)(?:\^?(\d+)|\^([+\-−]\d+)|([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))?/u,
  ],
  ['one', /^1(?=\s*[/∕⁄])/],
  ['slash', /^[/∕⁄]/],
  ['times', /^[·⋅∙×*-]/],
  ['open', /^\(/],
  ['close', /^\)/],
  ['stray', /^\S/u],
];

/** The words of a written unit in order, blanks left out; a character that belongs to no unit is a stray. */
export function unitTokens(text: string): readonly UnitToken[] {
  const tokens: UnitToken[] = [];
  let at = 0;
  while (at < text.length) {
    const token = tokenAt(text, at);
    if (token !== undefined) tokens.push(token);
    at = token?.end ?? at + 1;
  }
  return tokens;
}

function tokenAt(text: string, start: number): UnitToken | undefined {
  const rest = text.slice(start);
  for (const [kind, pattern] of patterns) {
    const match = pattern.exec(rest);
    if (match === null) continue;
    const [all, symbol = '', plain, signed, raised] = match;
    const power = plain ?? signed?.replace('−', '-') ?? fromSuperscript(raised ?? '1');
    return { kind, start, end: start + all.length, symbol, power: Number(power) };
  }
  return undefined;
}
