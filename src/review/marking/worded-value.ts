import { nameDimension, sameButAngle } from '../../units/index.ts';
import type { NameMeaning } from '../names/name-meanings.ts';
import type { Finding } from '../verdict.ts';
import type { WrittenConclusion } from './conclude.ts';
import { senseOfWord } from './judge-value.ts';

/** A conclusion in a unit that its symbol is not measured in, or in none. */
export function unfitUnit(
  { value, dimension, isBare }: WrittenConclusion,
  meaning: Pick<NameMeaning, 'dimension'>,
): Finding | undefined {
  if (dimension === undefined || value === 0) return undefined;
  if (sameButAngle(dimension, meaning.dimension)) return undefined;
  return {
    kind: 'unit',
    message: isBare
      ? 'The number lacks its unit.'
      : `This is ${nameDimension(dimension)}; what is worked here is ${nameDimension(meaning.dimension)}.`,
  };
}

/**
 * The value in the sense of its symbol: a direction in words says the sense by itself, so that
 * `RA = 6 kN down` of a symbol drawn up is −6 kN.
 */
export function wordedValue(
  { value, direction }: WrittenConclusion,
  meaning: NameMeaning,
): number {
  if (direction === undefined) return value;
  const share = meaning.kind === 'unknown' ? Math.sign(meaning.share) || 1 : 1;
  return Math.abs(value) * senseOfWord(direction) * share;
}
