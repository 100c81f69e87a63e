import { codePoint } from '../font/index.ts';

/** What is remarked of an equation that is set as plain text. */
export function plainEquation(linear: string): string {
  return `The equation “${linear}” has a character that the equation faces lack; it is set as plain text.`;
}

/** What is remarked of a character that no face has. */
export function missingCharacter(character: string): string {
  return `No typeface at hand has the character “${character}”; it is printed as [${codePoint(character)}].`;
}
