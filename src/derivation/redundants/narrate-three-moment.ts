import { name } from '../../equation/index.ts';
import { slopeDeflection, threeMoment, type ThreeMoment } from '../../statics/index.ts';
import { displayUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { narrateSystem } from '../linear-system/narrate-system.ts';
import type { LinearSystem } from '../linear-system/system.ts';
import { narrateAlong } from '../narrators/narrate-along.ts';
import { reactionsFound } from '../narrators/reactions-found.ts';
import type { Step } from '../steps.ts';
import { supportMoment, type ContinuousSetting } from './continuous-setting.ts';
import { knownSide } from './known-side.ts';
import { narrateEndShears } from './narrate-end-shears.ts';
import {
  narrateJointLoads,
  narrateSimpleSpans,
  prepareLoads,
} from './narrate-joint-loads.ts';
import { narrateJointReactions } from './narrate-joint-reactions.ts';
import { narrateLoadTerms } from './narrate-load-terms.ts';
import { narrateRigidity } from './rigidity.ts';
import { hasEquation, narrateRowOfSpans } from './row-of-spans.ts';
import { narrateSupportEquations } from './support-equations.ts';

/**
 * Three-moment equations for one case: the equation in general, the load terms of every span, one
 * equation a support, their solution, and from the moments at the supports every shear and reaction.
 */
export function narrateThreeMoment(context: CaseContext): readonly Step[] {
  const work = threeMoment(context.structure, context.mark);
  const slope = slopeDeflection(context.structure, context.mark);
  const { setting: named, steps: loads } = prepareLoads({ context, work: slope });
  const setting: ContinuousSetting = { ...named, beam: work.beam, terms: work.terms };
  const termSpans = narrateLoadTerms(setting, (support) => hasEquation(work, support));
  return [
    narrateRigidity(context),
    ...loads,
    ...narrateJointLoads(setting),
    narrateRowOfSpans(setting, work),
    ...(termSpans.length === 0
      ? []
      : [{ kind: 'load-terms', spans: termSpans } as const]),
    ...(work.equations.length === 0
      ? []
      : [
          narrateSupportEquations(setting, work),
          narrateSystem(systemOf(setting, work)),
        ]),
    ...narrateSimpleSpans(setting),
    narrateEndShears(setting, work.moments),
    ...narrateJointReactions(setting),
    ...narrateAlong(context),
    reactionsFound(context),
  ];
}

/** The equations gathered, with the moments that solve them. */
function systemOf(setting: ContinuousSetting, work: ThreeMoment): LinearSystem {
  const { system, figures } = setting.context.printing;
  const at = (support: number): number =>
    work.equations.findIndex((one) => one.support === support);
  return {
    figures,
    unknowns: work.equations.map(({ support }) => ({
      of: name(supportMoment(setting, support)),
      unit: displayUnit(system, 'moment'),
      value: work.moments[support] ?? 0,
    })),
    rows: work.equations.map((equation, index) => {
      const factors = work.equations.map(() => 0);
      const put = (support: number, factor: number): void => {
        if (at(support) >= 0) factors[at(support)] = factor;
      };
      put(equation.support - 1, equation.before);
      put(equation.support, equation.here);
      put(equation.support + 1, equation.after);
      return {
        number: index + 1,
        factors,
        known: knownSide(work, equation),
        unit: displayUnit(system, 'rigidity'),
      };
    }),
  };
}
