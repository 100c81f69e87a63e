import { formatNumber } from './format-number.ts';

/** Past this many decimals a ratio is told from 1 in words. */
const mostDecimals = 6;

/**
 * A ratio of demand to capacity to two decimals. One above 1 fails and never prints as 1.00: it takes more
 * decimals (1.0004), or reads `>1.00` where even six do not tell. Whether it fails is judged unrounded.
 */
export function formatRatio(ratio: number): string {
  for (let count = 2; count <= mostDecimals; count += 1) {
    const { text, value } = formatNumber(ratio, { kind: 'decimals', count });
    if (ratio <= 1 || value > 1) return text;
  }
  return '>1.00';
}
