import { movementTolerance } from '../tolerances.ts';
import { singularValues } from './singular-values.ts';
import { combineVectors, dot, type Vector } from './vector.ts';

/**
 * The part of a space on which every one of some linear functionals is zero, as an orthonormal
 * basis. `basis` is orthonormal and the functionals are of the order of 1, so what is noise is
 * judged against 1 and not against the greatest value: all of them may be noise.
 */
export function whereAllVanish(
  basis: readonly Vector[],
  functionals: readonly Vector[],
): readonly Vector[] {
  const images = basis.map((vector) =>
    functionals.map((functional) => dot(functional, vector)),
  );
  const { values, combinations } = singularValues(images);
  return combinations
    .filter((_, index) => (values[index] ?? 0) <= movementTolerance)
    .map((factors) => combineVectors(factors, basis, basis[0]?.length ?? 0));
}
