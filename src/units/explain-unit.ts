import type { Dimension } from './dimension.ts';
import { nameDimension, unitsThatFit } from './dimension-names.ts';
import { isMass, nearestUnit } from './nearest-unit.ts';
import type { UnitFault } from './parse-unit.ts';
import { quoted, type QuantityProblem } from './quantity-problem.ts';

/** What is wrong with a unit, the offsets counted in `text`, and what would fit where `expected` is known. */
export function explainUnit(
  text: string,
  fault: UnitFault,
  expected: Dimension | undefined,
): QuantityProblem {
  const { kind, start, end } = fault;
  const written = text.slice(start, end);
  if (kind === 'malformed') {
    return {
      kind,
      start,
      end,
      message:
        written === ''
          ? `the unit of ${quoted(text)} breaks off`
          : `"${quoted(written)}" is out of place in ${quoted(text)}`,
      hints: [
        'write units like kip ft, kip/ft, in^4 or kN m/rad; what divides together stands in parentheses, as in kN/(m rad)',
      ],
    };
  }
  return {
    kind,
    start,
    end,
    message: `no unit is called ${quoted(written)}`,
    hints: [...hintsFor(written), ...fittingHints(expected)],
  };
}

function hintsFor(written: string): readonly string[] {
  if (isMass(written)) return [`${written} is a mass: write its weight, in kN or lb`];
  const nearest = nearestUnit(written);
  return nearest === undefined ? [] : [`write ${nearest}`];
}

function fittingHints(expected: Dimension | undefined): readonly string[] {
  const fitting = expected === undefined ? [] : unitsThatFit(expected);
  return fitting.length === 0 ? [] : [`units that fit here: ${fitting.join(', ')}`];
}

/** A number where a unit belongs. */
export function explainBareNumber(text: string, expected: Dimension): QuantityProblem {
  const examples = unitsThatFit(expected).map((unit) => `${quoted(text)} ${unit}`);
  return {
    kind: 'bare-number',
    start: 0,
    end: text.length,
    message: `${quoted(text)} has no unit, and ${nameDimension(expected)} is wanted`,
    hints: examples.length === 0 ? [] : [`write ${listed(examples)}`],
  };
}

/** A quantity that measures something else. */
export function explainDimension(
  text: string,
  found: Dimension,
  expected: Dimension,
): QuantityProblem {
  const fitting = unitsThatFit(expected);
  return {
    kind: 'wrong-dimension',
    start: 0,
    end: text.length,
    message: `${quoted(text)} is ${nameDimension(found)}, not ${nameDimension(expected)}`,
    hints: [
      fitting.length === 0
        ? 'write the number without a unit'
        : `units that fit here: ${fitting.join(', ')}`,
    ],
  };
}

function listed(examples: readonly string[]): string {
  const last = examples.at(-1) ?? '';
  return examples.length < 2 ? last : `${examples.slice(0, -1).join(', ')} or ${last}`;
}
