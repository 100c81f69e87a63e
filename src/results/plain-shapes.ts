import type { Shape } from './shape.ts';

/** Any text. */
export const text: Shape = { kind: 'text' };
/** A whole number. */
export const whole: Shape = { kind: 'number', whole: true };
/** A finite number. */
export const number: Shape = { kind: 'number' };
/** A list of one shape. */
export const list = (of: Shape): Shape => ({ kind: 'list', of });
const nothing: Shape = { kind: 'exactly', value: null };
/** A shape, or null. */
export const orNull = (of: Shape): Shape => ({
  kind: 'either',
  choose: (value) => (value === null ? nothing : of),
});
/** An object with the keys it must have, and those it may have. */
export const object = (
  required: Readonly<Record<string, Shape>>,
  optional: Readonly<Record<string, Shape>> = {},
): Shape => ({ kind: 'object', required, optional });
