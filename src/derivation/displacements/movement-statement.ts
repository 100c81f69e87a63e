import {
  exactly,
  functionOf,
  minus,
  name,
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
import { tidy, value, type Printing } from '../printing.ts';
import type { DisplacementStep } from '../steps.ts';
import type { Bending } from './bending.ts';
import { bendingFigure, unitOfTimes } from './bending-units.ts';
import type { Condition } from './conditions.ts';
import { exactZeroOr } from './exact-figure.ts';
import { deflectionSymbol, rigiditySymbols, slopeSymbol } from './stiffness-symbols.ts';

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
  const parts = [
    ...springPart(printing, condition),
    ...settlementPart(printing, condition),
  ];
  const [only] = parts;
  if (only === undefined) return exactly(0, displayUnit(printing.system, 'deflection'));
  return parts.length === 1 && only.sign === -1 ? sum(minus(only.of)) : sum(...parts);
}

function springPart(
  printing: Printing,
  { what, restraint: { stiffness }, force }: Condition,
): readonly Term[] {
  if (stiffness === undefined || force === 0) return [];
  const isSlope = what === 'slope';
  const acting = value(printing, isSlope ? 'moment' : 'force', Math.abs(force));
  const kind = isSlope ? 'rotational-stiffness' : 'stiffness';
  return [
    { sign: force < 0 ? 1 : -1, of: quotient(acting, tidy(printing, kind, stiffness)) },
  ];
}

function settlementPart(
  printing: Printing,
  { what, restraint, settlement }: Condition,
): readonly Term[] {
  if (settlement === 0) return [];
  const sunk = settlement / (restraint.kind === 'force' ? restraint.direction[1] : 1);
  const kind = what === 'slope' ? 'angle' : 'deflection';
  return [{ sign: sunk < 0 ? 1 : -1, of: tidy(printing, kind, Math.abs(sunk)) }];
}
