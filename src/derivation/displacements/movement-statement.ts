import {
  exactly,
  functionOf,
  minus,
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
import type { DisplacementStep } from '../steps.ts';
import type { Bending } from './bending.ts';
import { bendingFigure, unitOfTimes } from './bending-units.ts';
import type { Condition } from './conditions.ts';
import { exactZeroOr } from './exact-figure.ts';
import { deflectionSymbol, rigiditySymbols, slopeSymbol } from './stiffness-symbols.ts';
import { name } from '../../equation/index.ts';

/** Why a support's movement is what it is. */
export function whyOf({
  restraint,
  settlement,
  slide,
}: Condition): Extract<DisplacementStep, { kind: 'condition' }>['why'] {
  if (slide !== 0) return 'inclined';
  if (restraint.stiffness !== undefined) return 'spring';
  return settlement === 0 ? 'held' : 'settles';
}

/** A support's movement from its spring and its settlement, and E I times it; nothing where it stands still. */
export function movementStatement(
  context: CaseContext,
  bending: Bending,
  condition: Condition,
): Statement | undefined {
  const { printing } = context;
  const { what, x, movement } = condition;
  if (movement === 0) return undefined;
  const isSlope = what === 'slope';
  const symbol = isSlope ? slopeSymbol : deflectionSymbol;
  const at = tidy(printing, 'length', x);
  const moved = value(printing, isSlope ? 'angle' : 'deflection', movement);
  const [E, I] = rigiditySymbols(context, bending.from);
  const rigidity = bendingFigure(printing, 1, bending.EI);
  const times = isSlope ? 1 : 2;
  // A radian is a plain number here, so that E I θ comes in the unit of E I.
  const factor = isSlope ? exactZeroOr(printing, pureUnit, movement) : moved;
  const worked = withConversion(
    product(rigidity, factor),
    unitOfTimes(printing, times),
  );
  return {
    lines: [
      {
        left: functionOf(symbol, at),
        chain: [
          { sign: '=', of: movementOf(context, condition) },
          { sign: '=', of: moved },
        ],
      },
      {
        left: product(name(E), name(I), functionOf(symbol, at)),
        chain: [
          { sign: '=', of: worked },
          { sign: '=', of: bendingFigure(printing, times, bending.EI * movement) },
        ],
      },
    ],
  };
}

/** `−(6.2 kip) / (40 kip/in) − 0.5 in`. */
function movementOf({ printing }: CaseContext, condition: Condition): Expression {
  const { what, restraint, force, settlement } = condition;
  const isSlope = what === 'slope';
  const parts: Term[] = [];
  if (restraint.stiffness !== undefined && force !== 0) {
    const kind = isSlope ? 'rotational-stiffness' : 'stiffness';
    const acting = value(printing, isSlope ? 'moment' : 'force', Math.abs(force));
    parts.push({
      sign: force < 0 ? 1 : -1,
      of: quotient(acting, tidy(printing, kind, restraint.stiffness)),
    });
  }
  if (settlement !== 0) {
    const along = restraint.kind === 'force' ? restraint.direction[1] : 1;
    const sunk = settlement / along;
    const figure = tidy(printing, isSlope ? 'angle' : 'deflection', Math.abs(sunk));
    parts.push({ sign: sunk < 0 ? 1 : -1, of: figure });
  }
  const [only] = parts;
  if (only === undefined) return exactly(0, displayUnit(printing.system, 'deflection'));
  return parts.length === 1 && only.sign === -1 ? sum(minus(only.of)) : sum(...parts);
}
