import { isObject, itemsOf, keyOf, textOf, type Json } from './json.ts';

/** The greatest size among the figures of a kind; 0 where there are none. */
export type ScaleOf = (kind: string) => number;

/**
 * The scale of each kind of figure on a member, over both its states. Figures of one unit are of one
 * kind (forces, moments, deflections …); bare numbers are of one kind where they stand under one key.
 * The terms of closing sums are left out: they are larger than any force, and have a scale of their own.
 */
export function figureScales(...states: readonly (Json | undefined)[]): ScaleOf {
  const greatest = new Map<string, number>();
  const note = (kind: string, number: number): void => {
    greatest.set(kind, Math.max(greatest.get(kind) ?? 0, Math.abs(number)));
  };
  const visit = (value: Json | undefined, key: string): void => {
    if (typeof value === 'number') note(bareKind(key), value);
    if (!isObject(value)) {
      for (const item of itemsOf(value)) visit(item, key);
      return;
    }
    const [number, unit] = [keyOf(value, 'value'), textOf(value, 'unit')];
    const isFigure = typeof number === 'number' && unit !== undefined;
    if (isFigure) note(unit, number);
    for (const [inner, below] of Object.entries(value))
      if (inner !== 'closure' && !(isFigure && inner === 'value')) visit(below, inner);
  };
  for (const state of states) visit(state, '');
  return (kind) => greatest.get(kind) ?? 0;
}

/** The kind of bare numbers under a key; a unit never looks like it. */
export function bareKind(key: string): string {
  return `number under ${key}`;
}
