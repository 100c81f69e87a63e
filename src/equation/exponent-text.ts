/** An exponent as people write it: 2, 1/2, 3/2, 1/3; else its decimals. */
export function exponentText(exponent: number): string {
  const under = [1, 2, 3, 4].find((n) => isWhole(exponent * n));
  if (under === undefined) return String(exponent);
  const over = String(Math.round(exponent * under));
  return under === 1 ? over : `${over}/${under}`;
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < 1e-12;
}
