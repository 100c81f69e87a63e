import type { Shape } from './shape.ts';
import { reportMisfit } from './misfit.ts';

const decimal = /^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?$/;

/** Bounds of a number, both included, and whether it must be whole. */
export interface NumberBounds {
  readonly from: number;
  readonly to: number;
  readonly whole?: boolean;
}

/** A plain decimal number within bounds; octal and hexadecimal ways of writing, `.inf` and `.nan` are refused. */
export function numberFrom(bounds: NumberBounds): Shape<number> {
  const kind = bounds.whole === true ? 'a whole number' : 'a number';
  const expects = `${kind} from ${bounds.from} to ${bounds.to}`;
  return {
    expects,
    schema: {
      type: bounds.whole === true ? 'integer' : 'number',
      minimum: bounds.from,
      maximum: bounds.to,
    },
    read: (tree, reading) => {
      if (tree.kind !== 'text') {
        reportMisfit(tree, expects, reading);
        return undefined;
      }
      const value = Number(tree.text);
      // A leading 0 is octal in YAML 1.1 and decimal in 1.2: nobody can tell what was meant.
      const isPlain = decimal.test(tree.text) && !/^[-+]?0\d/.test(tree.text);
      const fits = value >= bounds.from && value <= bounds.to;
      if (isPlain && fits && (bounds.whole !== true || Number.isInteger(value)))
        return value;
      if (isPlain) {
        reading.report({
          code: 'number-out-of-range',
          message: `${expects} belongs here, not ${tree.text}`,
          span: tree.span,
        });
        return undefined;
      }
      reportMisfit(tree, expects, reading, [
        'write a plain decimal number without a unit',
      ]);
    },
  };
}

/** A factor on a load or a case: any decimal number of reasonable size, minus allowed. */
export const factor: Shape<number> = numberFrom({ from: -1000, to: 1000 });
