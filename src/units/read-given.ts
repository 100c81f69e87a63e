import type { PrintedFigure } from './print.ts';
import { readFeetInches } from './read-feet-inches.ts';
import { readNumber } from './read-number.ts';
import { powerText } from './superscript.ts';

/**
 * A given text as a printed figure: a number (`8.4`, `1,250`, `36.9e6`, `6 1/2`) or, where it is
 * compound, feet and inches. A text that is neither is a programmer's mistake, a RangeError.
 */
export function readGiven(text: string, compound: boolean): PrintedFigure {
  const negative = /^[-−]/.test(text);
  const bare = negative ? text.slice(1) : text;
  const figure = compound ? compoundFigure(bare) : numberFigure(bare);
  if (figure === undefined) throw new RangeError(`"${text}" is no printed number`);
  if (!negative || figure.value === 0) return figure;
  return { ...figure, negative, text: `−${figure.text}`, value: -figure.value };
}

function numberFigure(text: string): PrintedFigure | undefined {
  const read = readNumber(text);
  if (read?.end !== text.length || !Number.isFinite(read.value)) return undefined;
  return {
    text: `${read.mantissa}${powerText(read.exponent)}`,
    negative: false,
    mantissa: read.mantissa,
    exponent: read.exponent,
    compound: false,
    value: read.value,
    lastPlace: read.value === 0 ? 0 : read.lastPlace,
  };
}

function compoundFigure(text: string): PrintedFigure | undefined {
  const read = readFeetInches(text);
  if (read === undefined) return undefined;
  return {
    text: read.text,
    negative: false,
    mantissa: read.text,
    exponent: 0,
    compound: true,
    value: read.feet,
    lastPlace: read.feet === 0 ? 0 : read.lastPlace,
  };
}
