import {
  divideUnits,
  expandUnit,
  multiplyUnits,
  powerOfUnit,
  pureUnit,
  unitOf,
  type Unit,
} from '../units/index.ts';
import type { Expression } from './expression.ts';

/**
 * The unit that working an expression from its figures gives: kip·ft for 8.4 kip (6 ft), lb/ft for
 * 65 psf (8 ft), powers and cancelled factors worked out, no symbol converted into another. A sum has the
 * unit of its first term that has one. Undefined where a symbol or a heading stands in the way.
 */
export function resultUnit(expression: Expression): Unit | undefined {
  const unit = plainUnit(expression);
  return unit === undefined ? undefined : openShortNames(unit);
}

function plainUnit(expression: Expression): Unit | undefined {
  switch (expression.kind) {
    case 'figure':
      return expression.unit;
    case 'sum':
      return unitOfSum(expression.terms.map(({ of }) => plainUnit(of)));
    case 'product':
      return expression.factors.map(plainUnit).reduce(combine(multiplyUnits), pureUnit);
    case 'quotient':
      return combine(divideUnits)(
        plainUnit(expression.over),
        plainUnit(expression.under),
      );
    case 'power':
      return raised(expression.base, expression.exponent);
    case 'bracket':
      return raised(expression.of, expression.exponent);
    case 'call':
      return unitOfCall(expression.of, plainUnit(expression.argument));
    case 'integral':
      return combine(multiplyUnits)(plainUnit(expression.of), plainUnit(expression.to));
    case 'name':
    case 'function-of':
    case 'sum-of':
      return undefined;
  }
}

function raised(base: Expression, exponent: number): Unit | undefined {
  const unit = plainUnit(base);
  return unit === undefined ? undefined : powerOfUnit(unit, exponent);
}

function unitOfSum(units: readonly (Unit | undefined)[]): Unit | undefined {
  if (units.includes(undefined)) return undefined;
  return (
    units.find((unit) => unit !== undefined && unit.factors.length > 0) ?? pureUnit
  );
}

function unitOfCall(of: string, argument: Unit | undefined): Unit | undefined {
  if (argument === undefined) return undefined;
  if (of === 'sqrt') return powerOfUnit(argument, 0.5);
  return of === 'abs' ? argument : pureUnit;
}

function combine(
  how: (a: Unit, b: Unit) => Unit,
): (a: Unit | undefined, b: Unit | undefined) => Unit | undefined {
  return (a, b) => (a === undefined || b === undefined ? undefined : how(a, b));
}

/** True where a short name (psf) would meet one of its own factors (ft) among others when written out. */
export function meetsItsFactors(symbol: string, others: ReadonlySet<string>): boolean {
  const written = expandUnit(unitOf([{ symbol, power: 1 }]));
  return (
    written.factors.length > 1 && written.factors.some((f) => others.has(f.symbol))
  );
}

// psf·ft is lb/ft to any engineer; psf alone stays.
function openShortNames(unit: Unit): Unit {
  const symbols = new Set(unit.factors.map((f) => f.symbol));
  return unit.factors.some((f) => meetsItsFactors(f.symbol, symbols))
    ? expandUnit(unit)
    : unit;
}
