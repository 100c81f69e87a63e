/** What a quantity measures, as powers of four base dimensions. A pure number has all four 0. */
export interface Dimension {
  readonly force: number;
  readonly length: number;
  /** Temperature differences only: 20 K = 36 °F, no offset. */
  readonly temperature: number;
  /** Angles count, so that `kip ft/rad` and `kip ft` are told apart. */
  readonly angle: number;
}

/** A dimension from the powers that are not 0. */
export function dimension(powers: Partial<Dimension>): Dimension {
  return { force: 0, length: 0, temperature: 0, angle: 0, ...powers };
}

/** The dimension of a product of two quantities. */
export function multiplyDimensions(a: Dimension, b: Dimension): Dimension {
  return {
    force: a.force + b.force,
    length: a.length + b.length,
    temperature: a.temperature + b.temperature,
    angle: a.angle + b.angle,
  };
}

/** The dimension of a quantity raised to a power, whole or fractional. */
export function powerOfDimension(of: Dimension, power: number): Dimension {
  const raised = (value: number): number => (value === 0 ? 0 : value * power);
  return {
    force: raised(of.force),
    length: raised(of.length),
    temperature: raised(of.temperature),
    angle: raised(of.angle),
  };
}

/** The dimension of a quotient. */
export function divideDimensions(over: Dimension, under: Dimension): Dimension {
  return multiplyDimensions(over, powerOfDimension(under, -1));
}

/** True where two quantities may stand in one sum, angles told apart from pure numbers. */
export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.angle === b.angle && sameButAngle(a, b);
}

/**
 * True where two quantities may stand in one sum when the radian is read as the pure number that
 * it is in calculus (ISO 80000-3:2019, 3-5): a slope worked as w L³/(24 E I) may print in rad.
 */
export function sameButAngle(a: Dimension, b: Dimension): boolean {
  return (
    a.force === b.force && a.length === b.length && a.temperature === b.temperature
  );
}
