import type { Diagram, KeyValue } from '../figure-spec.ts';
import { isSame } from '../pictures/stations.ts';
import { valueUnder } from './plot.ts';
import type { PlotScale } from './curve-path.ts';

/** A value to be labelled: at one station, or once for a stretch over which it stays the same. */
export interface LabelledValue {
  readonly key: KeyValue;
  /** Where it stands, x in points; equal for a single station. */
  readonly from: number;
  readonly to: number;
}

/**
 * The values to label, from left to right. Where one station says the same twice, once is enough;
 * where the curve stays level between two neighbours that say the same, one label stands for both.
 */
export function mergeKeyValues(
  { keyValues, curves }: Diagram,
  scale: PlotScale,
): readonly LabelledValue[] {
  const sorted = keyValues
    .map((key): LabelledValue => {
      const x = scale.xOf(key.x);
      return { key, from: x, to: x };
    })
    .sort((a, b) => a.from - b.from || rank(a.key) - rank(b.key));
  const merged: LabelledValue[] = [];
  for (const next of sorted) {
    const index = merged.findIndex((before) => saysTheSame(before, next));
    const before = merged[index];
    if (before === undefined) merged.push(next);
    else {
      const isExtreme = before.key.isExtreme === true || next.key.isExtreme === true;
      merged[index] = { ...before, key: { ...before.key, isExtreme }, to: next.to };
    }
  }
  return merged;

  function saysTheSame(a: LabelledValue, b: LabelledValue): boolean {
    if (JSON.stringify(a.key.label) !== JSON.stringify(b.key.label)) return false;
    if (scale.yOf(a.key.value) !== scale.yOf(b.key.value)) return false;
    return isSame(a.to, b.from) || isLevel(a, b);
  }

  function isLevel(a: LabelledValue, b: LabelledValue): boolean {
    const parts = [0.02, 0.25, 0.5, 0.75, 0.98];
    return curves.some(({ of }) =>
      parts.every((part) => {
        const value = valueUnder(of, a.key.x + (b.key.x - a.key.x) * part);
        return value !== undefined && isSame(scale.yOf(value), scale.yOf(a.key.value));
      }),
    );
  }
}

function rank({ side }: KeyValue): number {
  return side === 'left' ? 0 : side === 'right' ? 2 : 1;
}
