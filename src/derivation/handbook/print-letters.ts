import {
  functionOf,
  name,
  negate,
  plus,
  sum,
  symbolKey,
  type Expression,
  type Figure,
  type StatementLine,
  type Symbol,
} from '../../equation/index.ts';
import type { CaseContext } from '../case-context.ts';
import { sizeFigure } from '../load-figures.ts';
import { inProjectUnit, tidy, value } from '../printing.ts';
import { momentSymbol, reactionSymbol } from '../symbols.ts';
import { stationOf } from './compare.ts';
import type { HandbookFit } from './find-case.ts';
import type { Amount } from './handbook-case.ts';
import { momentLetter, reactionLetter, symbols, type Letter } from './letters.ts';
import type { WorkedFormula } from './work-formulas.ts';

/** What stands on the sheet for a letter of a formula: a symbol of the member, and its figure. */
export interface PrintedLetter {
  readonly letter: Symbol;
  readonly symbol: Expression;
  readonly figure: Expression;
  /** The lines that say what a symbol means that stands for several loads of the file. */
  readonly means: readonly StatementLine[];
}

type LoadAmount = Extract<Amount, { readonly of: unknown }>;

/** The letters of a fit as the sheet prints them. */
export function printedLetters(
  context: CaseContext,
  { given }: HandbookFit,
): readonly PrintedLetter[] {
  return [
    ...(Object.entries(given) as [Letter, Amount][]).map(([letter, amount]) =>
      'of' in amount
        ? printedLoad(context, letter, amount)
        : printedLength(context, letter, amount),
    ),
    ...printedStiffness(context),
  ];
}

function printedLength(
  { printing }: CaseContext,
  letter: Letter,
  { what, si }: Exclude<Amount, LoadAmount>,
): PrintedLetter {
  const figure = tidy(printing, what === 'length' ? 'length' : 'deflection', si);
  return { letter: symbols[letter], symbol: name(symbols[letter]), figure, means: [] };
}

function printedLoad(
  context: CaseContext,
  letter: Letter,
  amount: LoadAmount,
): PrintedLetter {
  const { terms, si } = amount.of;
  const own = (id: string): Symbol =>
    amount.what === 'force-per-length'
      ? context.symbols.intensity(id)
      : context.symbols.load(id);
  const sized = (id: string, size: number): Figure =>
    sizeFigure(context, id, amount.what, size);
  const [only] = terms;
  if (only !== undefined && !amount.shared && isAlone(letter))
    return {
      letter: symbols[letter],
      symbol: name(own(only.id)),
      figure: sized(only.id, only.si),
      means: [],
    };
  const symbol = name(sharedSymbol(context, letter));
  const isSum = terms.length > 1;
  const figure =
    isSum || only === undefined
      ? value(context.printing, amount.what, si)
      : sized(only.id, only.si);
  const figures = sum(...terms.map(({ id, si: size }) => plus(sized(id, size))));
  return {
    letter: symbols[letter],
    symbol,
    figure,
    means: [
      ...(isSum
        ? [
            {
              left: symbol,
              chain: [{ sign: '=', of: sum(...terms.map(({ id }) => name(own(id)))) }],
              recheck: 'none',
            } as const,
            {
              chain: [
                { sign: '=', of: figures },
                { sign: '=', of: figure },
              ],
            } as const,
          ]
        : [{ left: symbol, chain: [{ sign: '=', of: figure }] } as const]),
    ],
  };
}

// The two intensities of one trapezoidal load share a number in the given list, so they need symbols of their own.
function isAlone(letter: Letter): boolean {
  return letter !== 'w1' && letter !== 'w2';
}

function sharedSymbol({ mark }: CaseContext, letter: Letter): Symbol {
  const { subscript, ...symbol } = { subscript: undefined, ...symbols[letter] };
  return {
    ...symbol,
    subscript: subscript === undefined ? mark : `${mark},${subscript}`,
    meaning: `${symbol.meaning} of ${mark} in a handbook case`,
  };
}

/** E and I of a member of one section; none where either is not given. */
function printedStiffness({
  definition,
  printing,
}: CaseContext): readonly PrintedLetter[] {
  const E = definition.material?.E;
  const I = definition.sections[0]?.section.I;
  if (E === undefined || I === undefined) return [];
  return [
    {
      letter: symbols.E,
      symbol: name(symbols.E),
      figure: inProjectUnit(printing, 'stress', E),
      means: [],
    },
    {
      letter: symbols.I,
      symbol: name(symbols.I),
      figure: inProjectUnit(printing, 'inertia', I),
      means: [],
    },
  ];
}

/** Reactions and moments of supports that a formula takes from the ones before it, as the sheet prints them. */
export function printedFound(
  context: CaseContext,
  { view }: HandbookFit,
  { values }: WorkedFormula,
): readonly PrintedLetter[] {
  return view.supports.flatMap(({ point, at }, index) =>
    ([reactionLetter, momentLetter] as const).flatMap(
      (letterOf): readonly PrintedLetter[] => {
        const letter = letterOf(index);
        const found = values.get(symbolKey(letter));
        if (found === undefined) return [];
        const isReaction = letterOf === reactionLetter;
        const symbol = isReaction
          ? name(verticalReaction(point))
          : momentAtStation(context, stationOf(view, at));
        const figure = value(
          context.printing,
          isReaction ? 'force' : 'moment',
          found.si,
        );
        return [
          {
            letter,
            symbol: view.sense === 1 ? symbol : negate(symbol),
            figure,
            means: [],
          },
        ];
      },
    ),
  );
}

/** The symbol of the upward reaction at a support. */
export function verticalReaction(point: string): Symbol {
  return reactionSymbol(point, { kind: 'force', direction: [0, 1] });
}

/** M at a station given from the member's first point. */
export function momentAtStation(
  { structure, printing }: CaseContext,
  at: number,
): Expression {
  return functionOf(
    momentSymbol,
    tidy(printing, 'length', (structure.points[0]?.x ?? 0) + at),
  );
}
