const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Digits of a whole number, not negative, as superscripts: 4 → ⁴. */
export function superscript(whole: number): string {
  return String(whole).replace(/\d/g, (digit) => superscripts[Number(digit)] ?? '');
}

/** A written whole number of superscripts, sign included, in plain digits: ⁻¹² → -12. */
export function fromSuperscript(raised: string): string {
  return raised
    .replace('⁻', '-')
    .replace('⁺', '+')
    .replace(/[⁰-⁹¹²³]/g, (digit) => String(superscripts.indexOf(digit)));
}

/** `×10⁶`, `×10^−6` (few text faces hold a raised minus), or nothing for power 0. */
export function powerText(exponent: number): string {
  if (exponent === 0) return '';
  return exponent > 0 ? `×10${superscript(exponent)}` : `×10^−${-exponent}`;
}
