import type { DerivedMember, EquationStep } from '../../../src/derivation/index.ts';
import {
  symbolText,
  toLinear,
  type Expression,
  type Statement,
} from '../../../src/equation/index.ts';

/** A term of a narrated sum as somebody takes it over. */
export interface NarratedTerm {
  readonly sign: 1 | -1;
  /** What leads it: an unknown's symbol, a number, or a number with the unknown that it is the value of. */
  readonly lead: string;
  /** The symbol of an unknown or load that the leading number stands for. */
  readonly stands: string;
  /** `(6 ft)`, a share, both or nothing. */
  readonly rest: string;
}

/** A narrated sum: what it is, its terms with figures in them, and how it is solved. */
export interface NarratedSum {
  readonly claim: string;
  readonly symbol: string;
  readonly terms: readonly NarratedTerm[];
  /** What the unknown comes to, line by line: `50.4 kip·ft / (21 ft)`, last its value. */
  readonly solution: readonly string[];
}

/** The sums that the derivation of a member narrates for a case, each solved by itself. */
export function narratedSums(
  { derivation }: Extract<DerivedMember, { kind: 'derived' }>,
  mark: string,
): readonly NarratedSum[] {
  const steps = derivation.sections
    .filter((section) => section.kind === 'equations' && section.case?.mark === mark)
    .flatMap((section) => section.steps);
  return steps.flatMap((step) =>
    step.kind === 'sum' && step.piece === undefined ? [sumOf(step)] : [],
  );
}

function sumOf(step: Extract<EquationStep, { kind: 'sum' }>): NarratedSum {
  const claims = { 'forces-x': 'forces right', 'forces-y': 'forces up' };
  return {
    claim: step.sum === 'moments' ? `moments about ${step.about}` : claims[step.sum],
    symbol: symbolText(step.found.symbol),
    terms: termsIn(step.statement),
    solution: step.solution.lines.flatMap(({ chain }) =>
      chain.map(({ of }) => plain(toLinear(of))),
    ),
  };
}

function termsIn({ lines }: Statement): readonly NarratedTerm[] {
  const [symbols = [], numbers = symbols] = [lines[0], lines.at(-1)].map((line) =>
    added(line?.chain[0]?.of),
  );
  return numbers.map(({ sign, of }, at): NarratedTerm => {
    const factors = of.kind === 'product' ? of.factors : [of];
    const [first, ...rest] = factors;
    const symbolic = symbols[at]?.of;
    const named = symbolic?.kind === 'product' ? symbolic.factors[0] : symbolic;
    const stands = named === undefined ? '' : plain(toLinear(named));
    const lead = first === undefined ? '' : plain(toLinear(first));
    return { sign, lead, stands, rest: rest.map((one) => `(${bare(one)})`).join(' ') };
  });
}

function added(
  of: Expression | undefined,
): readonly { readonly sign: 1 | -1; readonly of: Expression }[] {
  if (of === undefined) return [];
  return of.kind === 'sum' ? of.terms : [{ sign: 1, of }];
}

/** As people type it. */
function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ').replaceAll('−', '-');
}

function bare(of: Expression): string {
  return plain(toLinear(of)).replace(/^\((.*)\)$/u, '$1');
}
