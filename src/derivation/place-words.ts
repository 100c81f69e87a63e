import type { BeamPlace } from '../project/index.ts';
import { quantityText } from '../units/index.ts';

/** A place of the file in words: the point's name, else its station as given with its unit. */
export function placeWords({ point, given }: BeamPlace): string {
  if (point !== undefined) return point;
  if (given === undefined) return '';
  const { text, compound, unit } = given;
  return quantityText(given, unit, { kind: 'given', text, compound });
}
