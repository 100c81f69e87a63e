import {
  name,
  number,
  product,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { value } from '../printing.ts';
import {
  coupleAtRight,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { flexibilities, turnOfEnd } from './held-by-turns.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { referenceRigidity } from './rigidity.ts';
import { workedLines } from './worked-lines.ts';

const six = (of: Expression): Expression => product(number(6), of);

/** A stepped span: factors from its flexibilities, load terms from the turns of its ends. */
export function steppedTerms(
  setting: ContinuousSetting,
  one: OneSpan,
  { ends, index }: { readonly ends: readonly End[]; readonly index: number },
): readonly Statement[] {
  const { state, symbols, terms } = one;
  const length = (si: number): Figure => value(setting.context.printing, 'length', si);
  const factor = (
    left: Expression,
    which: 'aa' | 'bb' | 'ab',
    si: number,
  ): readonly Statement[] => [
    ...flexibilities(setting, state, [which]),
    workedLines(left, six(name(symbols.flexibility(which))), {
      numbers: six(length(si / 6)),
      found: length(si),
    }),
  ];
  return [
    ...ends.flatMap((end) =>
      end === 0
        ? factor(name(symbols.direct(0)), 'aa', terms.left.direct)
        : factor(name(symbols.direct(1)), 'bb', terms.right.direct),
    ),
    ...factor(name(symbols.cross), 'ab', terms.cross),
    ...ends.flatMap((end) => loadTermAt(setting, one, { end, index })),
  ];
}

/** The load term of a stepped span, free curvature in it. */
export function knownTurn(
  { beam }: ContinuousSetting,
  terms: OneSpan['terms'],
  end: End,
): number {
  const { load, turn } = end === 0 ? terms.left : terms.right;
  return load + 6 * beam.EI * turn;
}

/** A part of a load term, with the sign that its formula gives it. */
interface Part {
  readonly sign: 1 | -1;
  readonly symbols: Expression;
  readonly numbers: Expression;
  readonly si: number;
}

/** `T_BA = 6 E I₀ φ_BA + h_BA C_B`: the turn of the end, and a couple at the inner support beside it. */
function loadTermAt(
  setting: ContinuousSetting,
  { state, symbols, terms }: OneSpan,
  { end, index }: { readonly end: End; readonly index: number },
): readonly Statement[] {
  const si = knownTurn(setting, terms, end);
  const { couple, point } = coupleAtRight(setting, index);
  const factor = end === 0 ? terms.cross : terms.right.direct;
  const turned = si - factor * couple;
  const { printing } = setting.context;
  const parts: Part[] = [];
  if (Math.abs(turned) > 1e-12 * Math.abs(factor * couple))
    parts.push({
      sign: end === 0 ? -1 : 1,
      symbols: six(
        product(referenceRigidity(setting.context), name(symbols.turn(end))),
      ),
      numbers: six(value(printing, 'rigidity', Math.abs(turned) / 6)),
      si: turned,
    });
  if (couple !== 0)
    parts.push({
      sign: 1,
      symbols: product(
        name(end === 0 ? symbols.cross : symbols.direct(1)),
        name(jointLoadSymbol(point, 'couple')),
      ),
      numbers: product(
        value(printing, 'length', factor),
        value(printing, 'moment', Math.abs(couple)),
      ),
      si: couple,
    });
  if (parts.length === 0) return [];
  const symbolic = parts.map(({ sign, symbols: of }): Term => ({ sign, of }));
  const numeric = parts.map(({ si: own, numbers: of }): Term => ({
    sign: own < 0 ? -1 : 1,
    of,
  }));
  return [
    ...turnOfEnd(setting, state, end),
    workedLines(name(symbols.term(end)), sum(...symbolic), {
      numbers: sum(...numeric),
      found: value(printing, 'rigidity', si),
    }),
  ];
}
