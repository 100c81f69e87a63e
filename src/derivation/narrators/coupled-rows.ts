import {
  exactly,
  figure,
  name,
  product,
  sum,
  type Figure,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { valueOfUnknown, type Unknown } from '../../statics/index.ts';
import { displayUnit, pureUnit, quantity, type Unit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { value } from '../printing.ts';
import { bareZero, isCouple, numeratorFigure } from './narrate-sum.ts';
import type { EquationStep } from '../steps.ts';

/** The steps that bring coupled unknowns out, in order. */
export type Elimination = Extract<
  EquationStep,
  { kind: 'simultaneous' }
>['elimination'];

/** One equation in SI: factors of the unknowns, and the known side. */
export interface Row {
  /** Number of the equation as printed, from 1; a cleared row keeps it. */
  readonly number: number;
  readonly factors: readonly number[];
  readonly known: number;
  /** Whether the sum was one of moments (factors are lengths) or of forces. */
  readonly isMoments: boolean;
}

/** A row as `0.5 N_A + 0.866 N_B = 8.4 kip`, moments with lengths before the unknowns. */
export function gathered(
  context: CaseContext,
  unknowns: readonly Unknown[],
  row: Row,
): Statement {
  const terms = row.factors.flatMap((factor, index): readonly Term[] => {
    const unknown = unknowns[index];
    if (factor === 0 || unknown === undefined) return [];
    const letter = name(context.symbols.unknown(unknown));
    const of = product(
      factorFigure(context, { row, unknown }, Math.abs(factor)),
      letter,
    );
    return [{ sign: factor < 0 ? -1 : 1, of }];
  });
  return {
    lines: [
      {
        left: terms.length === 0 ? bareZero : sum(...terms),
        chain: [{ sign: '=', of: knownSide(context, row) }],
        recheck: 'none',
      },
    ],
  };
}

/** The factor of an unknown in a row: a length before a force in a sum of moments, else a pure number. */
export function factorFigure(
  context: CaseContext,
  { row, unknown }: { readonly row: Row; readonly unknown: Unknown },
  factor: number,
): Figure {
  const { system, figures } = context.printing;
  const unit: Unit =
    row.isMoments && !isCouple(context, unknown)
      ? displayUnit(system, 'length')
      : pureUnit;
  return figure(quantity(factor / unit.inSi, unit), unit, {
    kind: 'figures',
    count: figures,
  });
}

/** The known side of a row, a bare 0 where it is nothing. */
export function knownSide(context: CaseContext, row: Row): Figure {
  const sumKind = row.isMoments
    ? ({ kind: 'moments', about: 0 } as const)
    : ({ kind: 'forces', along: 'y' } as const);
  return row.known === 0
    ? exactly(0, pureUnit)
    : numeratorFigure(context, sumKind, row.known);
}

/** The same with its sign, to stand under a line. */
export function signedFactor(
  context: CaseContext,
  of: { readonly row: Row; readonly unknown: Unknown },
  factor: number,
): Figure {
  const size = factorFigure(context, of, Math.abs(factor));
  return factor < 0
    ? { ...size, quantity: { ...size.quantity, si: -size.quantity.si } }
    : size;
}

/** What the result found for an unknown, as printed. */
export function valueOf(context: CaseContext, unknown: Unknown): Figure {
  return value(
    context.printing,
    isCouple(context, unknown) ? 'moment' : 'force',
    valueOfUnknown(context.result, unknown),
  );
}
