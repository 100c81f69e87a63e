import type {
  CombinationContext,
  CombinationList,
  NamedSetRequest,
} from './named-set.ts';
import { namedSets } from './named-sets.ts';

/**
 * The combinations of one named set for a project's cases, with what must be said beside them:
 * assumptions, cautions, the cases that the set does not take and why, and mistakes that keep
 * the set from being worked out. A set that comes out empty is such a mistake.
 */
export function namedCombinations(
  request: NamedSetRequest,
  context: CombinationContext,
): CombinationList {
  const list = namedSets[request.name].list(request, context);
  if (list.combinations.length > 0 || list.problems.length > 0) return list;
  const message = `no load case is of a kind that ${request.name} combines`;
  return {
    ...list,
    problems: [{ kind: 'no-combination', subject: request.name, message }],
  };
}
