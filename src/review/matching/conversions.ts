import { isNear } from './closeness.ts';

/** Factors that slip in when units are converted, or are not. */
const conversions = [12, 144, 1000, 1e6, 100];
const systems = [4.448222, 0.3048, 1.355818];

/** The factor of a conversion that two sizes are apart, where they are. */
export function conversionIn(ratio: number): number | undefined {
  return [...conversions, ...systems].find(
    (factor) => isNear(ratio, factor) || isNear(ratio, 1 / factor),
  );
}

/** True where a factor is one between systems of units. */
export function isOfSystems(conversion: number): boolean {
  return systems.includes(conversion);
}
