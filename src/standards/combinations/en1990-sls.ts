import type { En1990Actions } from './en1990-actions.ts';
import { en1990NamedSet } from './en1990-set.ts';
import type { Expression } from './en1990-sums.ts';
import type { En1990Values } from './en1990-values.ts';
import type { NamedSet, NamedSetRequest } from './named-set.ts';

/**
 * Service combinations of EN 1990:2002+A1 6.5.3: characteristic 6.14b, frequent 6.15b and
 * quasi-permanent 6.16b (from memory). The last two need psi1 and psi2 and so a category for
 * every imposed load; where one is missing, only the characteristic ones are listed.
 */
export const en1990Sls: NamedSet = en1990NamedSet({
  name: 'en1990-sls',
  for: 'service',
  expressions: slsExpressions,
  notes: (actions) =>
    actions.withoutCategory.length === 0
      ? []
      : [
          {
            kind: 'caution',
            text: `Frequent and quasi-permanent combinations are not listed, because ${actions.withoutCategory.join(', ')} has no category of EN 1990 Table A1.1.`,
          },
        ],
});

const clause = 'EN 1990:2002+A1 6.5.3';

function slsExpressions(
  _values: En1990Values,
  _request: NamedSetRequest,
  actions: En1990Actions,
): readonly Expression[] {
  const permanent = [1];
  const characteristic: Expression = {
    clause: `${clause} (6.14b)`,
    permanent,
    leading: () => 1,
    accompanying: (action) => action.psi.psi0,
  };
  if (actions.withoutCategory.length > 0) return [characteristic];
  return [
    characteristic,
    {
      clause: `${clause} (6.15b)`,
      permanent,
      leading: (action) => action.psi.psi1,
      accompanying: (action) => action.psi.psi2,
    },
    {
      clause: `${clause} (6.16b)`,
      permanent,
      accompanying: (action) => action.psi.psi2,
    },
  ];
}
