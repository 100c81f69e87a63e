import { fromSuperscript } from './superscript.ts';

/** A number read from the head of a text. */
export interface ReadNumber {
  /** Without sign. May be infinite, or 0 for a number too small for a double: `digits` tells. */
  readonly value: number;
  /** Tidied for print: `1,250`, `0.5`, `36.9e6`, `6 1/2`. */
  readonly text: string;
  /** The written digits before any power of ten, thousands as written: `36.9`. */
  readonly mantissa: string;
  /** Power of ten as written; 0 for none. */
  readonly exponent: number;
  /** What one unit of the last written place is worth; for a fraction 1 over its lower number. */
  readonly lastPlace: number;
  /** Offset of the first character after the number. */
  readonly end: number;
}

const narrow = '\\u2009\\u202f';
const mixed = /^(?:(\d+)[ \u2009\u202f-])?(\d+)\/(\d+)(?![\d.,])/;
const plain = new RegExp(
  `^([1-9]\\d{0,2}(?:,\\d{3})+(?!\\d)|[1-9]\\d{0,2}(?:[${narrow}]\\d{3})+(?!\\d)|\\d+)?(\\.\\d*)?`,
);
const exponentE = /^[eE]([+\-−]?\d+)/;
const exponentTen =
  /^[ \u2009\u202f]?[×x*][ \u2009\u202f]?10(?:\^([+\-−]?\d+)|([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))/;

/**
 * Reads a number without sign at the head of a text: `8.4`, `.5`, `1,250`, `36.9e6`, `36.9×10⁶`,
 * `6 1/2`, `1/2`. Undefined where none begins there. Whether what follows may follow is the
 * caller's to judge.
 */
export function readNumber(text: string): ReadNumber | undefined {
  return readFraction(text) ?? readDecimal(text);
}

function readFraction(text: string): ReadNumber | undefined {
  const match = mixed.exec(text);
  if (match === null) return undefined;
  const [all, whole, over = '', under = ''] = match;
  if (Number(under) === 0) return undefined;
  const fraction = `${tidyWhole(over)}/${tidyWhole(under)}`;
  const written = whole === undefined ? fraction : `${tidyWhole(whole)} ${fraction}`;
  return {
    value: Number(whole ?? 0) + Number(over) / Number(under),
    text: written,
    mantissa: written,
    exponent: 0,
    lastPlace: 1 / Number(under),
    end: all.length,
  };
}

function readDecimal(text: string): ReadNumber | undefined {
  const match = plain.exec(text);
  const [all = '', whole = '', fraction = ''] = match ?? [];
  if (whole === '' && fraction.length < 2) return undefined;
  const power = readExponent(text.slice(all.length));
  const decimals = fraction.length > 1 ? fraction : '';
  const mantissa = `${tidyWhole(whole)}${decimals}`;
  const digits = `${whole.replace(/[,\u2009\u202f]/g, '') || '0'}${decimals}`;
  const places = Math.max(0, decimals.length - 1);
  return {
    value: Number(`${digits}e${power.exponent}`),
    text: power.exponent === 0 ? mantissa : `${mantissa}e${power.exponent}`,
    mantissa,
    exponent: power.exponent,
    lastPlace: Number(`1e${power.exponent - places}`),
    end: all.length + power.length,
  };
}

function readExponent(text: string): {
  readonly exponent: number;
  readonly length: number;
} {
  const match = exponentE.exec(text) ?? exponentTen.exec(text);
  if (match === null) return { exponent: 0, length: 0 };
  const written = match[1] ?? fromSuperscript(match[2] ?? '');
  // Number('-0') would print as −0; adding 0 makes it plain.
  return { exponent: Number(written.replace('−', '-')) + 0, length: match[0].length };
}

// 036 reads as 36, nothing before the point as 0.
function tidyWhole(whole: string): string {
  return whole.replace(/^0+(?=\d)/, '') || '0';
}
