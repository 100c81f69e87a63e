import {
  product,
  quotient,
  sum,
  withConversion,
  type Expression,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { displayUnit, pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy, value } from '../printing.ts';
import { exactZeroOr, tidyIn } from './exact-figure.ts';
import type { SupportWork } from './virtual-work.ts';

/** What a support that gives way adds: `r (R / k + s) = …`, a line without a left side of its own. */
export function supportWorkStatement(context: CaseContext, of: SupportWork): Statement {
  const { printing } = context;
  const { reaction, work } = of;
  const isTurning = reaction.restraint.kind === 'moment';
  const unit = displayUnit(printing.system, 'deflection');
  const by = isTurning
    ? tidy(printing, 'length', reaction.value)
    : tidyIn(printing, pureUnit, reaction.value);
  const moved = isTurning ? turned(context, of) : given(context, of);
  return {
    lines: [
      {
        left: withConversion(product(by, moved), unit),
        chain: [{ sign: '=', of: value(printing, 'deflection', work) }],
      },
    ],
  };
}

/** A rotation as a plain number: a radian counts as one. */
function turned(
  { printing }: CaseContext,
  { settlement, force, reaction }: SupportWork,
): Expression {
  const { stiffness } = reaction.restraint;
  const rotation = settlement + (stiffness === undefined ? 0 : force / stiffness);
  return exactZeroOr(printing, pureUnit, rotation);
}

/** A spring's giving way and a settlement, in the unit of deflections. */
function given(
  { printing }: CaseContext,
  { settlement, force, reaction }: SupportWork,
): Expression {
  const { stiffness } = reaction.restraint;
  const unit = displayUnit(printing.system, 'deflection');
  const terms: readonly Term[] = [
    ...(stiffness === undefined || force === 0
      ? []
      : [
          {
            sign: force < 0 ? -1 : 1,
            of: withConversion(
              quotient(
                value(printing, 'force', Math.abs(force)),
                tidy(printing, 'stiffness', stiffness),
              ),
              unit,
            ),
          } as const,
        ]),
    ...(settlement === 0
      ? []
      : [
          {
            sign: settlement < 0 ? -1 : 1,
            of: tidy(printing, 'deflection', Math.abs(settlement)),
          } as const,
        ]),
  ];
  return sum(...terms);
}
