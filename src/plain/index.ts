/**
 * Writes a report as plain text, for a terminal.
 *
 * The same blocks that layout sets on sheets are read here as lines of text: words wrapped, tables
 * aligned on their decimal points, equations in linear form stacked on their relation signs. Nothing
 * is measured but columns, no fonts are opened, and nothing in a title can steer the terminal.
 *
 * @module
 */
export { writePlain } from './write-plain.ts';
