import { dimensions, parseQuantity } from '../../units/index.ts';

/** A length as people write it, in metres; undefined for anything else. */
export function readLength(text: string): number | undefined {
  return parseQuantity(text, dimensions.length).quantity?.si;
}
