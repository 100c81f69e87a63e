import {
  collectSymbols,
  evaluate,
  symbolKey,
  symbolValues,
  type Expression,
  type SymbolValues,
} from '../../equation/index.ts';
import {
  displayUnit,
  type Display,
  type Quantity as Value,
} from '../../units/index.ts';
import type { HandbookFit } from './find-case.ts';
import type { Amount, Formula, Quantity } from './handbook-case.ts';
import { momentLetter, reactionLetter, symbols, type Letter } from './letters.ts';

/** A formula with the value that it gives for one beam, in the sense of the view, SI. */
export interface WorkedFormula {
  readonly formula: Formula;
  readonly si: number;
  /** Where the value is to be found, for formulas of one station: m from the end where the view begins. */
  readonly at?: number;
  /** What the letters of the formula stand for, reactions and moments found before it too. */
  readonly values: SymbolValues;
}

/** Modulus of elasticity and second moment of area. */
export interface EAndI {
  readonly E: number;
  readonly I: number;
}

/** Works the formulas of a fit one after another; those that need E and I only where these are given. */
export function workFormulas(
  { of, given }: HandbookFit,
  stiffness: EAndI | undefined,
): readonly WorkedFormula[] {
  let values: SymbolValues = new Map([
    ...letterValues(given),
    ...(stiffness === undefined ? [] : stiffnessValues(stiffness)),
  ]);
  const worked: WorkedFormula[] = [];
  for (const formula of of.formulas) {
    const value = valueOf(formula.value, values);
    if (value === undefined) continue;
    const place =
      'at' in formula.gives ? evaluate(formula.gives.at, values).si : undefined;
    worked.push({
      formula,
      si: value.si,
      values,
      ...(place === undefined ? {} : { at: place }),
    });
    values = new Map([...values, ...foundLetters(formula.gives, value)]);
  }
  return worked;
}

function valueOf(of: Expression, values: SymbolValues): Value | undefined {
  return needsStiffness(of) && !values.has(symbolKey(symbols.E))
    ? undefined
    : evaluate(of, values);
}

function needsStiffness(of: Expression): boolean {
  const lines = [{ chain: [{ sign: '=', of } as const] }];
  return collectSymbols([{ lines }]).some(
    (one) => symbolKey(one) === symbolKey(symbols.E),
  );
}

/** What a figure of the beam is measured in. */
export function measureOf(gives: Quantity): 'force' | 'moment' | 'deflection' {
  switch (gives.kind) {
    case 'reaction':
    case 'greatest-shear':
      return 'force';
    case 'support-moment':
    case 'moment':
      return 'moment';
    case 'extreme':
      return gives.of;
    case 'deflection':
      return 'deflection';
  }
}

/** The size of an amount, SI. */
function sizeOfAmount(amount: Amount): number {
  return 'of' in amount ? amount.of.si : amount.si;
}

const measured = (what: Display, si: number): Value => ({
  si,
  dimension: displayUnit('si', what).dimension,
});

function letterValues(given: HandbookFit['given']): SymbolValues {
  return symbolValues(
    (Object.entries(given) as [Letter, Amount][]).map(([letter, amount]) => [
      symbols[letter],
      measured(
        amount.what === 'settlement' ? 'length' : amount.what,
        sizeOfAmount(amount),
      ),
    ]),
  );
}

function stiffnessValues({ E, I }: EAndI): SymbolValues {
  return symbolValues([
    [symbols.E, measured('stress', E)],
    [symbols.I, measured('inertia', I)],
  ]);
}

function foundLetters(gives: Quantity, value: Value): SymbolValues {
  if (gives.kind !== 'reaction' && gives.kind !== 'support-moment') return new Map();
  const letter = gives.kind === 'reaction' ? reactionLetter : momentLetter;
  return symbolValues(gives.supports.map((index) => [letter(index), value]));
}
