import {
  functionOf,
  name,
  negate,
  substitute,
  symbolKey,
  withConversion,
  type Expression,
  type StatementLine,
  type Symbol,
} from '../../equation/index.ts';
import { displayUnit, type Unit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { deflectionSymbol } from '../displacements/stiffness-symbols.ts';
import {
  compareWith,
  isGreatest,
  stationOf,
  type Comparison,
} from '../handbook/compare.ts';
import type { Quantity } from '../handbook/handbook-case.ts';
import { findHandbookCase, type HandbookFit } from '../handbook/find-case.ts';
import {
  momentAtStation,
  printedFound,
  printedLetters,
  verticalReaction,
  type PrintedLetter,
} from '../handbook/print-letters.ts';
import { measureOf, workFormulas, type EAndI } from '../handbook/work-formulas.ts';
import { tidy, value, valueText } from '../printing.ts';
import { momentSymbol } from '../symbols.ts';
import { agree, type CheckOutcome } from './check-outcome.ts';

/** Handbook formulas agree with what was found, where the case is one that handbooks tabulate. */
export function standardCaseChecks(context: CaseContext): readonly CheckOutcome[] {
  const { arranged, mark, structure, result } = context;
  // Axles stand where they bend the beam most; their case is no loading that a table could be asked for.
  if (arranged.trains?.some((train) => train.case === mark) === true) return [];
  const fit = findHandbookCase(structure, mark);
  if (fit === undefined) return [];
  const compared = compareWith(
    fit,
    workFormulas(fit, stiffnessOf(context, fit)),
    result,
  );
  const letters = printedLetters(context, fit);
  const missed = compared.filter(({ si, found, scale }) =>
    found.some((one) => !agree(one, si, scale)),
  );
  return [
    {
      fact: {
        kind: 'check',
        check: 'standard-case',
        facts: {
          title: fit.of.title,
          ...(compared.length > 1 ? { several: 'yes' } : {}),
          ...(fit.view.sense === -1 ? { turned: 'yes' } : {}),
        },
        statement: {
          lines: [
            ...letters.flatMap(({ means }) => means),
            ...compared.flatMap((one) => linesOf(context, { fit, letters }, one)),
          ],
        },
        source: fit.of.source,
      },
      holds: missed.length === 0,
      finding: missed.map((one) => findingOf(context, one)).join('; '),
    },
  ];
}

function findingOf({ printing }: CaseContext, one: Comparison): string {
  const text = (si: number): string =>
    valueText(printing, measureOf(one.worked.formula.gives), si);
  return `a handbook formula (${one.worked.formula.gives.kind}) gives ${text(one.si)} instead of ${one.found.map(text).join(' and ')}`;
}

/** E and I where the member has one of each and the beam was solved with them. */
function stiffnessOf(
  { definition }: CaseContext,
  { EI }: HandbookFit,
): EAndI | undefined {
  const E = definition.material?.E?.si;
  const I = definition.sections[0]?.section.I?.si;
  if (E === undefined || I === undefined || EI === undefined) return undefined;
  return Math.abs(E * I - EI) <= 1e-12 * EI ? { E, I } : undefined;
}

interface Setting {
  readonly fit: HandbookFit;
  readonly letters: readonly PrintedLetter[];
}

/** The formula in symbols, then with figures and its value. */
function linesOf(
  context: CaseContext,
  { fit, letters }: Setting,
  one: Comparison,
): readonly StatementLine[] {
  const { formula } = one.worked;
  const { printing } = context;
  const display = measureOf(formula.gives);
  const known = [...letters, ...printedFound(context, fit, one.worked)];
  const standIns = (of: 'symbol' | 'figure'): ReadonlyMap<string, Expression> =>
    new Map(known.map((letter) => [symbolKey(letter.letter), letter[of]]));
  const isTurned = fit.view.sense === -1 && formula.gives.kind !== 'greatest-shear';
  const written = (of: 'symbol' | 'figure'): Expression => {
    const inserted = substitute(formula.value, standIns(of));
    return isTurned ? negate(inserted) : inserted;
  };
  const [left, ...others] = namesOf(context, fit, one);
  return [
    {
      ...(left === undefined ? {} : { left }),
      chain: [...others, written('symbol')].map((of) => ({ sign: '=', of })),
      recheck: 'none',
    },
    {
      chain: [
        {
          sign: '=',
          of: converted(written('figure'), displayUnit(printing.system, display)),
        },
        { sign: '=', of: value(printing, display, one.si) },
      ],
    },
  ];
}

/** In a unit, a minus before the whole left before the whole. */
function converted(of: Expression, unit: Unit): Expression {
  if (of.kind !== 'sum') return withConversion(of, unit);
  const [only, ...more] = of.terms;
  return only?.sign === -1 && more.length === 0
    ? negate(withConversion(only.of, unit))
    : withConversion(of, unit);
}

/** The names of the figure: of each of several supports that share alike. */
function namesOf(
  context: CaseContext,
  { view }: HandbookFit,
  { worked }: Comparison,
): readonly Expression[] {
  const { gives } = worked.formula;
  const station = stationOf(view, worked.at ?? NaN);
  switch (gives.kind) {
    case 'reaction':
      return gives.supports.map((index) =>
        name(verticalReaction(view.supports[index]?.point ?? '')),
      );
    case 'support-moment':
      return gives.supports.map((index) =>
        momentAtStation(context, stationOf(view, view.supports[index]?.at ?? NaN)),
      );
    case 'moment':
      return [momentAtStation(context, station)];
    case 'greatest-shear':
      return [name(greatestShearSymbol)];
    case 'deflection': {
      const first = context.structure.points[0]?.x ?? 0;
      const x = tidy(context.printing, 'length', first + station);
      return [functionOf(deflectionSymbol, x)];
    }
    case 'extreme':
      return [extremeName(view, gives)];
  }
}

const greatestShearSymbol: Symbol = {
  letter: 'V',
  subscript: 'max',
  meaning: 'greatest shear force, whatever its sign',
};

function extremeName(
  view: HandbookFit['view'],
  { of, end }: Extract<Quantity, { kind: 'extreme' }>,
): Expression {
  const isMax = isGreatest(view, end);
  const { letter, meaning } = of === 'moment' ? momentSymbol : deflectionSymbol;
  return name({
    letter,
    subscript: isMax ? 'max' : 'min',
    meaning: `${isMax ? 'greatest' : 'least'} ${meaning}`,
  });
}
