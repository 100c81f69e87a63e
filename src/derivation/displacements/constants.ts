import {
  bracket,
  name,
  product,
  type Expression,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { Unit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import type { Printing } from '../printing.ts';
import { bendingFigure, unitOfTimes } from './bending-units.ts';
import {
  constantsAt,
  type Integration,
  type IntegrationUnknown,
} from './integrate-bending.ts';
import { distanceFrom, reach } from './write-terms.ts';

/** The letter of an unknown of the integration. Couples of loads have the capital. */
export function constantSymbol(unknown: IntegrationUnknown): Symbol {
  switch (unknown.kind) {
    case 'slope':
      return {
        letter: 'c',
        subscript: '1',
        meaning: 'constant of integration of E I θ',
      };
    case 'deflection':
      return {
        letter: 'c',
        subscript: '2',
        meaning: 'constant of integration of E I v',
      };
    case 'hinge':
      return {
        letter: 'c',
        subscript: unknown.point,
        meaning: `E I times the change of slope at the hinge ${unknown.point}`,
      };
    case 'slide':
      return {
        letter: 'c',
        subscript: 'x',
        meaning: 'E I times the movement of the member along its axis',
      };
  }
}

/** The unit of an unknown of the integration. */
export function unitOfConstant(printing: Printing, { kind }: IntegrationUnknown): Unit {
  return unitOfTimes(printing, kind === 'slope' || kind === 'hinge' ? 1 : 2);
}

/** The value of an unknown as a figure. */
export function constantFigure(
  printing: Printing,
  { kind }: IntegrationUnknown,
  si: number,
): Expression {
  return bendingFigure(printing, kind === 'slope' || kind === 'hinge' ? 1 : 2, si);
}

/** The constants of E I θ or E I v as functions of x, in letters. */
export function constantsOfX(
  context: CaseContext,
  { unknowns, origin }: Integration,
  times: 1 | 2,
): readonly Term[] {
  return unknowns.flatMap((unknown): readonly Term[] => {
    const letter = name(constantSymbol(unknown));
    switch (unknown.kind) {
      case 'slope':
        return [
          {
            sign: 1,
            of: times === 1 ? letter : product(letter, distanceFrom(context, origin)),
          },
        ];
      case 'deflection':
        return times === 1 ? [] : [{ sign: 1, of: letter }];
      case 'hinge':
        return [
          {
            sign: 1,
            of: product(letter, bracket(distanceFrom(context, unknown.x), times - 1)),
          },
        ];
      case 'slide':
        return [];
    }
  });
}

/** The constants of E I θ or E I v worked at a station, in figures; those that are or give nothing left out. */
export function constantsAtStation(
  context: CaseContext,
  integration: Integration,
  { x, times }: { readonly x: number; readonly times: 1 | 2 },
): readonly Term[] {
  const worth = constantsAt(integration, x, times);
  return integration.unknowns.flatMap((unknown, index): readonly Term[] => {
    const value = integration.values[index] ?? 0;
    if (value === 0 || worth[index] === 0) return [];
    const figure = constantFigure(context.printing, unknown, Math.abs(value));
    const from = unknown.kind === 'hinge' ? unknown.x : integration.origin;
    const isTimesReach = times === 2 && unknown.kind !== 'deflection';
    return [
      {
        sign: value < 0 ? -1 : 1,
        of: isTimesReach ? product(figure, reach(context, x, from)) : figure,
      },
    ];
  });
}
