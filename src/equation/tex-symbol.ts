import type { Symbol } from './expression.ts';
import { greekNames } from './greek.ts';
import { texText } from './tex-text.ts';

const command = (letter: string): string | undefined => {
  if (letter === 'ℓ') return '\\ell';
  const greek = greekNames.get(letter);
  return greek === undefined ? undefined : `\\${greek}`;
};

/** A symbol as TeX: `R_{\mathrm{C}}`, `\bar{x}_{\mathrm{2}}`, `\theta`. */
export function symbolToTex(symbol: Symbol): string {
  const letter = letterToTex(symbol);
  const plain = symbol.bar === true ? `\\bar{${letter}}` : letter;
  const barred = `${plain}${"'".repeat(symbol.primes ?? 0)}`;
  if (symbol.subscript === undefined || symbol.subscript === '') return barred;
  return `${barred}_{${subscriptToTex(symbol.subscript)}}`;
}

function letterToTex({ letter, upright }: Symbol): string {
  const named = command(letter);
  if (named !== undefined) return named;
  if (/^[A-Za-z]$/.test(letter) && upright !== true) return letter;
  return uprightToTex(letter);
}

/**
 * A subscript as TeX: names of points and words upright, axes italic (ISO 80000-1:2022, 7.1.3): `x`, and
 * `\mathrm{A}x` for the x component at A.
 */
export function subscriptToTex(subscript: string): string {
  const axes = /^(|[A-Z0-9]+)([xyz])$/.exec(subscript);
  if (axes === null) return uprightToTex(subscript);
  const [, point = '', axis = ''] = axes;
  return `${point === '' ? '' : uprightToTex(point)}${axis}`;
}

function uprightToTex(words: string): string {
  const named = command(words);
  if (named !== undefined) return named;
  return /^[A-Za-z0-9]+$/.test(words) ? `\\mathrm{${words}}` : texText(words);
}
