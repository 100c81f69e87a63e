import {
  dimensions,
  divideDimensions,
  multiplyDimensions,
  nameDimension,
  powerOfDimension,
  sameButAngle,
  type Dimension,
} from '../../units/index.ts';
import type { Extent, Written } from './written.ts';

/** What a symbol is worth in a line: a number that is known, or an unknown that the line is linear in. */
export type Meaning =
  | { readonly kind: 'known'; readonly si: number; readonly dimension: Dimension }
  | {
      readonly kind: 'unknown';
      readonly key: string;
      readonly dimension: Dimension;
      /** How much of the unknown one of the symbol is: −1 where the worker's sense is the other one. */
      readonly share: number;
    }
  /** A declared symbol that cannot be told: why, in words. */
  | { readonly kind: 'unclear'; readonly problem: string };

/** What each declared symbol means; undefined for a symbol that nobody declared. */
export type Meanings = (name: string) => Meaning | undefined;

/** An expression worked as far as it goes: a constant and so much of each unknown, SI. */
export interface LinearForm {
  /** Undefined for a bare 0, which fits anywhere. */
  readonly dimension: Dimension | undefined;
  readonly constant: number;
  /** By the key of the unknown; what one unit of it adds. */
  readonly unknowns: ReadonlyMap<string, number>;
  /** How far rounding of the written figures can have moved the constant. */
  readonly spread: number;
}

/** Why an expression cannot be worked, with the place. */
export interface WorkingFault extends Extent {
  readonly kind: 'unit' | 'symbol' | 'syntax';
  readonly message: string;
}

/** An expression worked, or why it cannot be. */
export type Worked =
  | { readonly form: LinearForm; readonly fault?: undefined }
  | { readonly fault: WorkingFault; readonly form?: undefined };

const nothing: ReadonlyMap<string, number> = new Map();

/**
 * Works an expression into a constant and a share of each unknown. A number without a unit is a
 * pure number, an angle without one is in degrees. A sum of things that measure something else,
 * an unknown times an unknown or under a slash, division by 0: told with the place.
 */
export function linearForm(of: Written, meanings: Meanings): Worked {
  switch (of.kind) {
    case 'number': {
      const { quantity, isBare } = of;
      const isZero = isBare && quantity.si === 0;
      return constantForm(quantity.si, isZero ? undefined : quantity.dimension);
    }
    case 'name':
      return meaningOf(of, meanings);
    case 'sum':
      return workSum(of, meanings);
    case 'product':
      return workProduct(of, meanings);
    case 'quotient':
      return workQuotient(of, meanings);
    case 'power':
      return workPower(of, meanings);
    case 'call':
      return workCall(of, meanings);
  }
}

function fault(kind: WorkingFault['kind'], message: string, at: Extent): Worked {
  return { fault: { kind, message, start: at.start, end: at.end } };
}

function meaningOf(of: Extract<Written, { kind: 'name' }>, meanings: Meanings): Worked {
  const meaning = meanings(of.name);
  if (meaning === undefined)
    return fault('symbol', `\`${of.name}\` is not among the names of this file`, of);
  if (meaning.kind === 'unclear')
    return fault(
      'symbol',
      `what \`${of.name}\` stands for is not clear: ${meaning.problem}`,
      of,
    );
  if (meaning.kind === 'known') return constantForm(meaning.si, meaning.dimension);
  const { dimension, key, share } = meaning;
  return {
    form: { dimension, constant: 0, unknowns: new Map([[key, share]]), spread: 0 },
  };
}

function workSum(of: Extract<Written, { kind: 'sum' }>, meanings: Meanings): Worked {
  let dimension: Dimension | undefined;
  let [constant, spread] = [0, 0];
  const unknowns = new Map<string, number>();
  for (const { sign, of: term } of of.terms) {
    const worked = linearForm(term, meanings);
    if (worked.fault !== undefined) return worked;
    const { form } = worked;
    if (dimension !== undefined && form.dimension !== undefined) {
      if (!sameButAngle(dimension, form.dimension))
        return fault(
          'unit',
          `${nameDimension(form.dimension)} cannot be added to ${nameDimension(dimension)}`,
          term,
        );
    }
    dimension ??= form.dimension;
    constant += sign * form.constant;
    spread += form.spread;
    for (const [key, share] of form.unknowns)
      unknowns.set(key, (unknowns.get(key) ?? 0) + sign * share);
  }
  return { form: { dimension, constant, unknowns, spread } };
}

function workProduct(
  of: Extract<Written, { kind: 'product' }>,
  meanings: Meanings,
): Worked {
  let product: LinearForm = {
    dimension: dimensions.pure,
    constant: 1,
    unknowns: nothing,
    spread: 0,
  };
  for (const factor of of.factors) {
    const worked = linearForm(factor, meanings);
    if (worked.fault !== undefined) return worked;
    const { form } = worked;
    if (product.unknowns.size > 0 && form.unknowns.size > 0)
      return fault('syntax', 'an unknown is multiplied by an unknown', factor);
    product = multiplied(product, form);
  }
  return { form: product };
}

function multiplied(one: LinearForm, other: LinearForm): LinearForm {
  const [linear, scale] = one.unknowns.size > 0 ? [one, other] : [other, one];
  const { dimension: a } = one;
  const { dimension: b } = other;
  return {
    dimension:
      a === undefined || b === undefined ? undefined : multiplyDimensions(a, b),
    constant: one.constant * other.constant,
    unknowns: scaled(linear.unknowns, scale.constant),
    spread:
      Math.abs(one.constant) * other.spread + Math.abs(other.constant) * one.spread,
  };
}

function scaled(
  unknowns: ReadonlyMap<string, number>,
  factor: number,
): ReadonlyMap<string, number> {
  return unknowns.size === 0
    ? unknowns
    : new Map([...unknowns].map(([key, share]) => [key, share * factor]));
}

function workQuotient(
  of: Extract<Written, { kind: 'quotient' }>,
  meanings: Meanings,
): Worked {
  const over = linearForm(of.over, meanings);
  if (over.fault !== undefined) return over;
  const under = linearForm(of.under, meanings);
  if (under.fault !== undefined) return under;
  if (under.form.unknowns.size > 0)
    return fault('syntax', 'an unknown stands under a slash', of.under);
  if (under.form.constant === 0) return fault('syntax', 'this divides by 0', of.under);
  const { dimension: a } = over.form;
  const { dimension: b } = under.form;
  const factor = 1 / under.form.constant;
  return {
    form: {
      dimension:
        a === undefined || b === undefined ? undefined : divideDimensions(a, b),
      constant: over.form.constant * factor,
      unknowns: scaled(over.form.unknowns, factor),
      spread: over.form.spread * Math.abs(factor),
    },
  };
}

function workPower(
  of: Extract<Written, { kind: 'power' }>,
  meanings: Meanings,
): Worked {
  const base = linearForm(of.base, meanings);
  if (base.fault !== undefined) return base;
  const { dimension, constant, unknowns } = base.form;
  if (unknowns.size > 0) return fault('syntax', 'an unknown is raised to a power', of);
  const value = constant ** of.exponent;
  if (!Number.isFinite(value)) return fault('syntax', 'this power has no value', of);
  return {
    form: {
      dimension:
        dimension === undefined ? undefined : powerOfDimension(dimension, of.exponent),
      constant: value,
      unknowns,
      spread: 0,
    },
  };
}

function workCall(of: Extract<Written, { kind: 'call' }>, meanings: Meanings): Worked {
  const argument = linearForm(of.argument, meanings);
  if (argument.fault !== undefined) return argument;
  const { dimension, constant, unknowns } = argument.form;
  if (unknowns.size > 0) return fault('syntax', `an unknown stands in ${of.of}`, of);
  if (of.of === 'sqrt' || of.of === 'abs') return workRoot(of, argument.form);
  if (dimension !== undefined && !sameButAngle(dimension, dimensions.pure))
    return fault('unit', `${of.of} takes an angle`, of.argument);
  // An angle without a unit is in degrees, as on every drawing.
  const inDegrees = dimension?.angle !== 1;
  const angle = inDegrees ? (constant * Math.PI) / 180 : constant;
  const value = { sin: Math.sin, cos: Math.cos, tan: Math.tan }[of.of](angle);
  return constantForm(Math.abs(value) < 1e-15 ? 0 : value, dimensions.pure);
}

function workRoot(
  of: Extract<Written, { kind: 'call' }>,
  { dimension, constant }: LinearForm,
): Worked {
  const isRoot = of.of === 'sqrt';
  const value = isRoot ? Math.sqrt(constant) : Math.abs(constant);
  if (Number.isNaN(value)) return fault('syntax', 'a root of a negative number', of);
  const power = isRoot ? 0.5 : 1;
  return constantForm(
    value,
    dimension === undefined ? undefined : powerOfDimension(dimension, power),
  );
}

function constantForm(constant: number, dimension: Dimension | undefined): Worked {
  return { form: { dimension, constant, unknowns: nothing, spread: 0 } };
}
