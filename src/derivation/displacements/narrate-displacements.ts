import type { CaseContext } from '../case-context.ts';
import { elasticCurveFigure } from '../pictures/elastic-curve.ts';
import type { Step } from '../steps.ts';
import {
  greatestDeflections,
  type GreatestDeflection,
} from './greatest-deflections.ts';
import type { Integration } from './integrate-bending.ts';
import { narrateConditions } from './narrate-conditions.ts';
import { narrateGreatest } from './narrate-greatest.ts';
import { narrateHingeSlopes, narrateIntegration } from './narrate-integration.ts';
import { narrateOtherConditions } from './narrate-other-conditions.ts';
import { narrateRigidity } from './narrate-rigidity.ts';
import { narrateVirtualWork } from './narrate-virtual-work.ts';
import { integrationAround } from './worked-stretch.ts';

/**
 * Item 7 for one case, where E and I are known: E I v″ integrated twice with its constants, the greatest
 * deflections and where they are, each found again by virtual work, and the elastic curve.
 */
export function narrateDisplacements(context: CaseContext): readonly Step[] {
  if (context.result.displacement === undefined) return [];
  const extremes = greatestDeflections(context);
  if (extremes.length === 0) return [{ kind: 'no-displacement', case: context.mark }];
  const steps: Step[] = [];
  for (const { integration, of } of integrationsFor(context, extremes)) {
    steps.push(
      narrateRigidity(context, integration.bending),
      narrateIntegration(context, integration),
      ...narrateConditions(context, integration),
      ...narrateHingeSlopes(context, integration),
      ...narrateOtherConditions(context, integration),
      ...of.flatMap((extreme): readonly Step[] => [
        narrateGreatest(context, integration, extreme),
        narrateVirtualWork(context, extreme),
      ]),
    );
  }
  return [
    ...steps,
    {
      kind: 'figure',
      shows: 'elastic-curve',
      case: context.mark,
      figure: elasticCurveFigure(context, context.result),
    },
  ];
}

interface Group {
  readonly integration: Integration;
  readonly of: readonly GreatestDeflection[];
}

/** Extremes on one stretch share its integration. */
function integrationsFor(
  context: CaseContext,
  extremes: readonly GreatestDeflection[],
): readonly Group[] {
  const groups: Group[] = [];
  for (const extreme of extremes) {
    const index = groups.findIndex(
      ({ integration: { bending } }) =>
        bending.from <= extreme.x && extreme.x <= bending.to,
    );
    const group = groups[index];
    if (group === undefined)
      groups.push({
        integration: integrationAround(context, extreme.x),
        of: [extreme],
      });
    else groups[index] = { ...group, of: [...group.of, extreme] };
  }
  return groups;
}
