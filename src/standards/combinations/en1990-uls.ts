import { en1990NamedSet } from './en1990-set.ts';
import type { Expression } from './en1990-sums.ts';
import type { En1990Values } from './en1990-values.ts';
import type { NamedSet, NamedSetRequest } from './named-set.ts';

/**
 * Strength combinations of EN 1990:2002+A1 6.4.3.2 for STR, persistent and transient design
 * situations: by expression 6.10, or by 6.10a and 6.10b together (Table A1.2(B), from memory).
 */
export const en1990Uls: NamedSet = en1990NamedSet({
  name: 'en1990-uls',
  for: 'strength',
  expressions: ulsExpressions,
  notes: () => [
    {
      kind: 'caution',
      text: 'Loss of equilibrium (EQU, EN 1990 Table A1.2(A)) is not among the combinations; nor are GEO, accidental and seismic situations.',
    },
  ],
});

const clause = 'EN 1990:2002+A1 6.4.3.2';

function ulsExpressions(
  values: En1990Values,
  request: NamedSetRequest,
): readonly Expression[] {
  const high = values.permanentHigh;
  const low = values.permanentLow;
  const accompanying: Expression['accompanying'] = (action) =>
    values.variable * action.psi.psi0;
  const leading: Expression['accompanying'] = () => values.variable;
  if (request.expression !== '6.10ab') {
    const permanent = [high, low];
    return [{ clause: `${clause} (6.10)`, permanent, leading, accompanying }];
  }
  const reduced = reducedFactor(values.xi, high);
  return [
    { clause: `${clause} (6.10a)`, permanent: [high, low], accompanying },
    { clause: `${clause} (6.10b)`, permanent: [reduced, low], leading, accompanying },
  ];
}

/**
 * The factor xi · gamma_G of 6.10b to two decimals, upwards: the notes to Table A1.2(B) give
 * 0.85 × 1.35 as 1.15, and British practice 0.925 × 1.35 as 1.25.
 */
function reducedFactor(xi: number, high: number): number {
  return Math.ceil(xi * high * 100 - 1e-9) / 100;
}
