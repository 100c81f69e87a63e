import { slopeDeflection } from '../../statics/index.ts';
import { displayUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { narrateSystem } from '../linear-system/narrate-system.ts';
import type { LinearSystem } from '../linear-system/system.ts';
import { narrateAlong } from '../narrators/narrate-along.ts';
import { reactionsFound } from '../narrators/reactions-found.ts';
import type { Step } from '../steps.ts';
import { knownEnds, narrateEndForces, narrateEndMoments } from './narrate-ends.ts';
import { narrateEndsFound } from './narrate-ends-found.ts';
import { narrateHeldSpans } from './narrate-held-spans.ts';
import {
  narrateJointLoads,
  narrateSimpleSpans,
  prepareLoads,
} from './narrate-joint-loads.ts';
import { narrateJointReactions } from './narrate-joint-reactions.ts';
import { narrateJointEquilibrium } from './narrate-joints.ts';
import { narrateRigidity } from './rigidity.ts';
import {
  spanName,
  unknownExpression,
  unknownUnit,
  type SlopeSetting,
} from './slope-setting.ts';

/**
 * Slope-deflection for one case: the movements of joints that are unknown, the moments on the ends of
 * the spans in terms of them, the equilibrium of the joints, and from its solution every reaction.
 */
export function narrateSlopeDeflection(context: CaseContext): readonly Step[] {
  const work = slopeDeflection(context.structure, context.mark);
  const { setting, steps: loads } = prepareLoads({ context, work });
  return [
    {
      kind: 'joint-unknowns',
      unknowns: work.unknowns.map((unknown) => ({
        what: unknown.kind,
        point: work.joints[unknown.joint]?.point ?? '',
        of: unknownExpression(setting, unknown),
      })),
      spans: work.spans.map((span) => spanName(setting, span)),
      knownEnds: knownEnds(setting),
    },
    narrateRigidity(context),
    ...loads,
    ...narrateJointLoads(setting),
    ...narrateSimpleSpans(setting),
    ...narrateHeldSpans(setting),
    ...narrateEndMoments(setting),
    ...narrateEndForces(setting, (joint) => isMoving(setting, joint)),
    ...narrateJointEquilibrium(setting),
    ...(work.unknowns.length === 0 ? [] : [narrateSystem(systemOf(setting))]),
    ...narrateEndsFound(setting),
    ...narrateJointReactions(setting),
    ...narrateAlong(context),
    reactionsFound(context),
  ];
}

/** True where the forces across a joint stand in an equation: it moves, or an inclined support ties it to the slide. */
function isMoving({ work }: SlopeSetting, joint: number): boolean {
  const slides = work.unknowns.some(({ kind }) => kind === 'slide');
  return (
    work.unknowns.some((one) => one.kind === 'deflection' && one.joint === joint) ||
    (slides &&
      (work.joints[joint]?.restraints ?? []).some(
        (r) => r.kind === 'force' && r.direction[0] !== 0 && r.direction[1] !== 0,
      ))
  );
}

function systemOf(setting: SlopeSetting): LinearSystem {
  const { work, context } = setting;
  const { system, figures } = context.printing;
  return {
    figures,
    unknowns: work.unknowns.map((unknown) => ({
      of: unknownExpression(setting, unknown),
      unit: unknownUnit(setting, unknown),
      value: unknown.value,
    })),
    rows: work.equations.map(({ of, factors, known }, index) => ({
      number: index + 1,
      factors,
      known,
      unit: displayUnit(system, of === 'rotation' ? 'moment' : 'force'),
    })),
  };
}
