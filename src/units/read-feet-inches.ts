import { readNumber } from './read-number.ts';

/** Feet and inches read from a text without sign. */
export interface ReadFeetInches {
  /** In feet. */
  readonly feet: number;
  /** Tidied for print: `12 ft 6 1/2 in`. */
  readonly text: string;
  /** What one unit of the last written place of the inches is worth, in feet. */
  readonly lastPlace: number;
}

const feetAndInches =
  /^(\d+)(?:\s*ft\s*|\s*['′’]\s*-?\s*)(\d+(?:[ -]\d+\/\d+)?|\d+\.\d+|\d+\/\d+)\s*(?:in|"|″|”)$/;

/**
 * Reads a length in whole feet and inches: `12 ft 6 in`, `12 ft 6 1/2 in`, `12'-6 1/2"`. Undefined for
 * anything else: feet that are not whole, and twelve inches or more, are slips.
 */
export function readFeetInches(text: string): ReadFeetInches | undefined {
  const match = feetAndInches.exec(text);
  if (match === null) return undefined;
  const feet = readNumber(match[1] ?? '');
  const written = match[2] ?? '';
  const inches = readNumber(written);
  if (feet === undefined || inches?.end !== written.length) return undefined;
  if (inches.value >= 12) return undefined;
  return {
    feet: feet.value + inches.value / 12,
    text: `${feet.text} ft ${inches.text} in`,
    lastPlace: inches.lastPlace / 12,
  };
}
