import type { Code } from '../../diagnostics/index.ts';
import {
  dimensions,
  nameDimension,
  parseQuantity,
  unitsThatFit,
  type DimensionName,
  displayUnit,
  type Display,
  type GivenQuantity,
  type QuantityProblem,
} from '../../units/index.ts';
import type { Finding, Reading } from '../reading.ts';
import { hashHint } from '../yaml/slips.ts';
import type { TextTree } from '../yaml/tree.ts';
import { reportMisfit } from './misfit.ts';
import type { Shape } from './shape.ts';

/** The dimensions that definitions speak of. */
export type QuantityName = Exclude<DimensionName, 'pure' | 'rigidity' | 'curvature'>;

type QuantityProblemKind = QuantityProblem['kind'];

/** Which numbers may stand before the unit; default any. */
export type Sign = 'any' | 'positive' | 'not-negative';

/** Sizes in SI units outside of these come from a slip of the pen and would drown the arithmetic. */
const greatest = 1e18;
const least = 1e-18;
/** The unit that a bare 0 takes, by what it stands for. */
const displays: Readonly<Record<QuantityName, Display>> = {
  length: 'length',
  area: 'area',
  volume: 'section-modulus',
  inertia: 'inertia',
  force: 'force',
  'force-per-length': 'force-per-length',
  pressure: 'pressure',
  'unit-weight': 'unit-weight',
  moment: 'moment',
  'rotational-stiffness': 'rotational-stiffness',
  angle: 'direction',
  temperature: 'temperature',
  expansion: 'expansion',
};
/** No member is longer than this, in metres. */
const longest = 1e6;

/** A quantity of a dimension, with its unit; a bare 0 is fine. */
export function quantityOf(
  name: QuantityName,
  sign: Sign = 'any',
): Shape<GivenQuantity> {
  const dimension = dimensions[name];
  const expects = nameDimension(dimension);
  const example = unitsThatFit(dimension).join(', ');
  return {
    expects,
    schema: {
      anyOf: [
        { type: 'string', description: `${expects} with its unit: ${example}` },
        { const: 0 },
      ],
    },
    read: (tree, reading) => {
      if (tree.kind !== 'text') {
        reportMisfit(
          tree,
          expects,
          reading,
          tree.kind === 'empty' ? [] : [`write a number and its unit: ${example}`],
        );
        return undefined;
      }
      return readQuantity(tree, { name, sign }, reading);
    },
  };
}

function readQuantity(
  tree: TextTree,
  wanted: { readonly name: QuantityName; readonly sign: Sign },
  reading: Reading,
): GivenQuantity | undefined {
  const parsed = parseQuantity(
    tree.text,
    dimensions[wanted.name],
    displayUnit(reading.units, displays[wanted.name]),
  );
  if (parsed.problem !== undefined) {
    const { kind, start, end, message, hints } = parsed.problem;
    const pound = poundSlip(tree, reading);
    reading.report({
      code: pound === undefined ? codeOf[kind] : 'pound-sign',
      message:
        pound === undefined ? message : 'a comment begins at ` #`, so the unit is lost',
      span: within(tree, start, end),
      hints: pound === undefined ? hints : [pound],
    });
    return undefined;
  }
  const fault = sizeFault(parsed.quantity, wanted, tree.text);
  if (fault === undefined) return parsed.quantity;
  reading.report({ ...fault, span: tree.span });
  return undefined;
}

const codeOf: Readonly<Record<QuantityProblemKind, Code>> = {
  'bare-number': 'unit-missing',
  'unknown-unit': 'unit-unknown',
  'wrong-dimension': 'unit-misfit',
  malformed: 'not-a-quantity',
  'not-finite': 'number-out-of-range',
  'ambiguous-comma': 'comma-in-number',
};

// Offsets inside the value are offsets inside the file only where nothing is escaped.
function within(tree: TextTree, start: number, end: number): TextTree['span'] {
  if (tree.quoted || tree.span.end - tree.span.start !== tree.text.length)
    return tree.span;
  return { ...tree.span, start: tree.span.start + start, end: tree.span.start + end };
}

function poundSlip(tree: TextTree, reading: Reading): string | undefined {
  if (tree.quoted || !/^-?[\d.,]+$/.test(tree.text)) return undefined;
  const after = reading.text.slice(tree.span.end, tree.span.end + 40);
  return /^[ \t]+#/.test(after) ? hashHint(tree.text) : undefined;
}

type Fault = Pick<Finding, 'code' | 'message' | 'hints'>;

function sizeFault(
  quantity: GivenQuantity,
  wanted: { readonly name: QuantityName; readonly sign: Sign },
  written: string,
): Fault | undefined {
  const size = Math.abs(quantity.si);
  const most = wanted.name === 'length' ? longest : greatest;
  if (size > most || (size < least && size > 0))
    return {
      code: 'number-out-of-range',
      message: `\`${written}\` is far out of the reach of any structure`,
      hints: ['look for a slip in the number or its unit'],
    };
  const isNegative = wanted.sign !== 'any' && quantity.si < 0;
  const isZero = wanted.sign === 'positive' && quantity.si === 0;
  if (!isNegative && !isZero) return undefined;
  const words = nameDimension(quantity.dimension);
  const bound = wanted.sign === 'positive' ? 'greater than 0' : 'of 0 or more';
  return {
    code: 'not-positive',
    message: `${words} ${bound} belongs here, not \`${written}\``,
  };
}
