/**
 * A length or a share of colour as it stands in a content stream: three decimals at most, never
 * in powers of ten. Throws RangeError on what is no finite number.
 */
export function formatNumber(value: number): string {
  const rounded = Math.round(value * 1000) / 1000;
  if (!(Math.abs(rounded) < 1e9))
    throw new RangeError(`${value} is no place on a page.`);
  return rounded === 0 ? '0' : String(rounded);
}

/** Several numbers with spaces between them. */
export function formatNumbers(...values: readonly number[]): string {
  return values.map(formatNumber).join(' ');
}
