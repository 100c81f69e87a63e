import { parseQuantity, parseUnit, type GivenQuantity } from '../../units/index.ts';
import type { Extent, ReadingFault } from './written.ts';
import { raisedPower, type RaisedPower } from './raised-power.ts';

/** A word of a written line. */
export type Token = Extent &
  (
    | {
        readonly kind: 'number';
        readonly quantity: GivenQuantity;
        readonly isBare: boolean;
        readonly lastPlace: number;
      }
    /** A unit that stands by itself, as in `(20/2) ft`: one of it. */
    | { readonly kind: 'unit'; readonly quantity: GivenQuantity }
    | { readonly kind: 'name'; readonly name: string }
    | { readonly kind: 'function'; readonly of: 'sin' | 'cos' | 'tan' | 'sqrt' | 'abs' }
    | {
        readonly kind: 'sign';
        readonly sign: '+' | '-' | '*' | '/' | '^' | '=' | '(' | ')';
      }
  );

/** The words of a line, or the first place that is none. */
export type Tokens =
  | { readonly tokens: readonly Token[]; readonly fault?: undefined }
  | { readonly fault: ReadingFault; readonly tokens?: undefined };

const signs: Readonly<Record<string, '+' | '-' | '*' | '/' | '^' | '=' | '(' | ')'>> = {
  '+': '+',
  '-': '-',
  '−': '-',
  '–': '-',
  '*': '*',
  '×': '*',
  '·': '*',
  '⋅': '*',
  '∙': '*',
  '/': '/',
  '÷': '/',
  '∕': '/',
  '^': '^',
  '=': '=',
  '≈': '=',
  '(': '(',
  ')': ')',
  '[': '(',
  ']': ')',
};

/**
 * Splits a line into words. `names` are the worker's declared symbols, any strings: where one
 * stands it is taken whole, the longest first, and it beats a unit except straight after a number.
 */
export function tokensOf(text: string, names: readonly string[]): Tokens {
  const declared = [...names]
    .filter((name) => name !== '')
    .sort((one, other) => other.length - one.length);
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    if (/\s/u.test(text[at] ?? '')) {
      at += 1;
      continue;
    }
    const token = tokenAt(text, at, {
      declared,
      before: tokens.at(-1),
      isExponent: isRaised(tokens),
    });
    if ('message' in token) return { fault: token };
    if (Array.isArray(token)) tokens.push(...(token as readonly Token[]));
    else tokens.push(token as Token);
    at = tokens.at(-1)?.end ?? text.length;
  }
  return { tokens };
}

interface Around {
  readonly declared: readonly string[];
  readonly before: Token | undefined;
  readonly isExponent: boolean;
}

/** True behind `^`, and behind `^-` as in the 10^-6 that is printed. */
function isRaised(tokens: readonly Token[]): boolean {
  const signs = tokens
    .slice(-2)
    .map((token) => (token.kind === 'sign' ? token.sign : ''));
  return signs.at(-1) === '^' || signs.join('') === '^-';
}

function tokenAt(
  text: string,
  at: number,
  { declared, before, isExponent }: Around,
): Token | readonly Token[] | ReadingFault {
  const rest = text.slice(at);
  const number = isExponent ? exponentAt(text, at) : numberAt(text, at, declared);
  if (number !== undefined) return number;
  const name = declared.find((one) => rest.startsWith(one) && endsWord(rest, one));
  if (name !== undefined)
    return { kind: 'name', name, start: at, end: at + name.length };
  return otherAt(text, at, { declared, before, isExponent });
}

/** A word that is no number and no declared name. */
function otherAt(
  text: string,
  at: number,
  { declared, before }: Around,
): Token | readonly Token[] | ReadingFault {
  const rest = text.slice(at);
  const power = raisedPower(rest);
  if (power !== undefined) return raisedTokens(power, at);
  const word = /^(?:√|[\p{L}_Σ][\p{L}\p{Nd}₀-₉_′]*)/u.exec(rest)?.[0];
  if (word !== undefined) return wordToken(word, at, { declared, before, rest });
  const sign = signs[text[at] ?? ''];
  if (sign !== undefined) return { kind: 'sign', sign, start: at, end: at + 1 };
  const character = String.fromCodePoint(text.codePointAt(at) ?? 0);
  return {
    kind: 'syntax',
    message: `the character ${shown(character)} has no meaning in an equation`,
    start: at,
    end: at + character.length,
  };
}

function shown(character: string): string {
  const number = (character.codePointAt(0) ?? 0).toString(16).toUpperCase();
  return /[\p{C}\p{Z}]/u.test(character)
    ? `U+${number.padStart(4, '0')}`
    : `\`${character}\``;
}

// A declared name is only meant where no letter or digit goes on: P is not the head of P1.
function endsWord(rest: string, name: string): boolean {
  const next = rest.slice(name.length);
  return !/[\p{L}\p{N}]$/u.test(name) || !/^[\p{L}\p{N}_]/u.test(next);
}

function raisedTokens(
  { length, isMinus, digits }: RaisedPower,
  at: number,
): readonly Token[] {
  const extent = { start: at, end: at + length };
  const signs = isMinus ? (['^', '-'] as const) : (['^'] as const);
  const tokens = signs.map((sign): Token => ({ kind: 'sign', sign, ...extent }));
  const { quantity } = parseQuantity(digits);
  return quantity === undefined
    ? tokens
    : [...tokens, { kind: 'number', quantity, isBare: true, lastPlace: 0, ...extent }];
}

const functions = ['sin', 'cos', 'tan', 'sqrt', 'abs'] as const;

function wordToken(
  word: string,
  start: number,
  {
    declared,
    before,
    rest,
  }: Pick<Around, 'declared' | 'before'> & { readonly rest: string },
): Token | readonly Token[] {
  const of = word === '√' ? 'sqrt' : functions.find((one) => one === word);
  if (of !== undefined)
    return { kind: 'function', of, start, end: start + word.length };
  // Behind a bracket or a number a unit may stand by itself; elsewhere an unknown word is a symbol.
  const follows =
    before?.kind === 'number' || (before?.kind === 'sign' && before.sign === ')');
  const unit = follows ? unitLength(rest, declared) : 0;
  const parsed = unit === 0 ? undefined : parseQuantity(`1 ${rest.slice(0, unit)}`);
  if (parsed?.quantity !== undefined)
    return { kind: 'unit', quantity: parsed.quantity, start, end: start + unit };
  let at = start;
  return (splitNames(word, declared) ?? [word]).map((name): Token => {
    const token: Token = { kind: 'name', name, start: at, end: at + name.length };
    at = token.end;
    return token;
  });
}

/** A word that is nothing but declared names one after the other (`wL`); undefined for any other. */
function splitNames(
  word: string,
  declared: readonly string[],
): readonly string[] | undefined {
  if (word === '') return [];
  for (const name of declared) {
    if (!word.startsWith(name)) continue;
    const others = splitNames(word.slice(name.length), declared);
    if (others !== undefined) return [name, ...others];
  }
  return undefined;
}

const feetInches =
  /^\d+(?:\s*ft\s*|\s*['′’]\s*-?\s*)(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d+\.\d+|\d+)\s*(?:in\b|["″”]|'')/u;
const mixed = /^\d+[ -]\d+\/\d+(?=\s*(?:in\b|ft\b|["″”'′’]))/u;
const decimal = /^(?:\d{1,3}(?:,\d{3})+(?!\d)|\d+)?(?:\.\d+)?(?:[eE][+\-−]?\d+)?/u;

/** A number with the unit that goes with it; undefined where none begins. */
function numberAt(
  text: string,
  at: number,
  declared: readonly string[],
): Token | undefined {
  const rest = text.slice(at);
  const length = feetInches.exec(rest)?.[0];
  if (length !== undefined) return measured(length, at, { isBare: false, places: '0' });
  const digits = mixed.exec(rest)?.[0] ?? decimal.exec(rest)?.[0] ?? '';
  if (!/^\.?\d/u.test(digits)) return undefined;
  const after = rest.slice(digits.length);
  const mark = /^\s*(?:''|["″”])/u.exec(after) ?? /^\s*['′’]/u.exec(after);
  const tail = mark?.[0] ?? after.slice(0, unitLength(after, declared));
  const isBare = tail.trim() === '';
  return measured(`${digits}${isBare ? '' : tail}`, at, { isBare, places: digits });
}

/** An exponent takes no unit: 10^6 mm is a million millimetres. */
function exponentAt(text: string, at: number): Token | undefined {
  const digits = decimal.exec(text.slice(at))?.[0] ?? '';
  if (!/^\.?\d/u.test(digits)) return undefined;
  return measured(digits, at, { isBare: true, places: digits });
}

function measured(
  written: string,
  start: number,
  { isBare, places }: { readonly isBare: boolean; readonly places: string },
): Token | undefined {
  const read = parseQuantity(written);
  if (read.quantity === undefined) return undefined;
  const { quantity } = read;
  const decimals = /\.(\d+)/u.exec(places)?.[1]?.length ?? 0;
  const exponent = Number(
    /[eE]([+\-−]?\d+)/u.exec(places)?.[1]?.replace('−', '-') ?? 0,
  );
  const lastPlace = 10 ** (exponent - decimals) * quantity.unit.inSi;
  const end = start + written.length;
  return { kind: 'number', quantity, isBare, lastPlace, start, end };
}

const factor = String.raw`(?:°[CF]?|#|\p{L}+)(?:\^[-+−]?\d+|[⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+|[2-6](?![\d.\p{L}]))?`;
const firstFactor = new RegExp(String.raw`^\s*(${factor})`, 'u');
// A word that goes on (`F1`, `N_2`) is a symbol and no unit.
const nextFactor = new RegExp(
  String.raw`^(-|\s*[·⋅∙*]\s*|\s+|\s*[/∕]\s*)(${factor})(?![\d\p{L}_])`,
  'u',
);

/**
 * How many characters at the head of a text are the unit of the number before it. The first word
 * is taken as a unit though a symbol has its name; further ones only where no symbol has.
 */
function unitLength(text: string, declared: readonly string[]): number {
  const first = firstFactor.exec(text);
  if (first === null || !isUnit(first[1] ?? '')) return 0;
  let length = first[0].length;
  let more = moreUnit(text, length, declared);
  while (more > 0) {
    length += more;
    more = moreUnit(text, length, declared);
  }
  return length;
}

/** How many characters more belong to the unit that ends at an offset; 0 where it ends there. */
function moreUnit(text: string, length: number, declared: readonly string[]): number {
  const next = nextFactor.exec(text.slice(length));
  if (next === null) return 0;
  const [all, between = '', word = ''] = next;
  // Written close, `kN·m` is one unit whatever is declared.
  if (/\s/u.test(between) && declared.includes(word)) return 0;
  const whole = text.slice(0, length + all.length).trim();
  return isUnit(word) && isUnit(whole) ? all.length : 0;
}

function isUnit(word: string): boolean {
  const parsed = parseUnit(word.trim());
  return parsed.fault === undefined && word.trim() !== '';
}
