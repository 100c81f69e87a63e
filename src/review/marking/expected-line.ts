import {
  name as symbolName,
  product,
  sum,
  toLinear,
  zero,
  type Expression,
  type StatementLine,
  type Symbol,
} from '../../equation/index.ts';
import type { MarkingContext } from '../marking-context.ts';
import { writtenSymbol } from '../reading/written-symbol.ts';
import type { Atom } from '../matching/atoms.ts';
import type { Slip } from '../matching/slips.ts';
import { asFigure } from './phrases.ts';
import type { SumClaim } from './read-claim.ts';
import type { Worker } from './worker.ts';

/** The right line of a sum, and which of its terms were written otherwise. */
export interface ExpectedLine {
  readonly line: StatementLine;
  readonly text: string;
  readonly differing: readonly number[];
}

/**
 * The line that belongs in place of a wrong one: every term of the sum in the worker's own symbols,
 * under the worker's own convention. Terms without an arm are left out.
 */
export function expectedLine(
  context: MarkingContext,
  claim: SumClaim,
  atoms: readonly Atom[],
  of: {
    readonly worker: Worker;
    readonly sense: 1 | -1;
    readonly slips: readonly Slip[];
  },
): ExpectedLine {
  const shown = atoms.filter(
    ({ factor, size, key }) => factor !== 0 && (size !== 0 || key),
  );
  const terms = shown.map((atom) => termOf(context, claim, atom, of));
  const left = sum(...terms);
  const at = new Set(of.slips.flatMap((slip) => slip.atoms.map(({ id }) => id)));
  return {
    line: { left, chain: [{ sign: '=', of: zero() }], recheck: 'none' },
    text: inOwnSpelling(`${toLinear(left)} = 0`.replaceAll('\u00a0', ' '), of.worker),
    differing: shown.flatMap(({ id }, index) => (at.has(id) ? [index] : [])),
  };
}

/** Symbols as the worker writes them: RC where the program would print R_C. */
function inOwnSpelling(text: string, { names }: Pick<Worker, 'names'>): string {
  let own = text;
  for (const name of names.keys()) {
    const printed = toLinear(symbolName(writtenSymbol(name)));
    if (printed !== name)
      own = own
        .split(' ')
        .map((word) =>
          word.replace(/^[−-]/u, '') === printed
            ? word.replace(printed, () => name)
            : word,
        )
        .join(' ');
  }
  return own;
}

function termOf(
  context: MarkingContext,
  claim: SumClaim,
  atom: Atom,
  { worker, sense }: { readonly worker: Worker; readonly sense: 1 | -1 },
): { readonly sign: 1 | -1; readonly of: Expression } {
  const { size, own } = sizeOf(context, atom, worker);
  const sign = atom.factor * own * sense < 0 ? -1 : 1;
  if (atom.quantity === 'couple') return { sign, of: size };
  const reach = Math.abs(atom.factor) / (atom.key === undefined ? 1 : Math.abs(own));
  if (claim.sum.kind === 'moments')
    return { sign, of: product(size, asFigure(context, 'length', reach)) };
  return Math.abs(reach - 1) < 1e-9
    ? { sign, of: size }
    : { sign, of: product(size, asFigure(context, 'pure', reach)) };
}

/** A load as its figure, an unknown as the worker's symbol; `own` is the sense of what is written, or how much of the unknown the symbol is. */
function sizeOf(
  context: MarkingContext,
  atom: Atom,
  worker: Worker,
): { readonly size: Expression; readonly own: number } {
  const what = atom.quantity === 'couple' ? 'moment' : 'force';
  if (atom.key === undefined)
    return {
      size: asFigure(context, what, Math.abs(atom.size)),
      own: Math.sign(atom.size) || 1,
    };
  const found = symbolFor(atom.key, worker);
  return {
    size: symbolName(found?.symbol ?? plainSymbol(atom)),
    own: found?.share ?? 1,
  };
}

/** The worker's symbol for an unknown, and how much of the unknown one of it is. */
export function symbolFor(
  key: string,
  { names }: Pick<Worker, 'names'>,
): { readonly symbol: Symbol; readonly share: number } | undefined {
  for (const [text, meaning] of names) {
    if (
      typeof meaning === 'string' ||
      meaning.kind !== 'unknown' ||
      meaning.key !== key
    )
      continue;
    return { symbol: writtenSymbol(text), share: meaning.share };
  }
  return undefined;
}

// A force that the worker has no symbol for takes the one that everybody would.
function plainSymbol({ what, quantity }: Atom): Symbol {
  if (what.kind === 'reaction')
    return {
      letter: quantity === 'couple' ? 'M' : 'R',
      subscript: what.point,
      meaning: `reaction at ${what.point}`,
    };
  const force = what.kind === 'cut' ? what.force : 'shear';
  const letter = { axial: 'N', shear: 'V', moment: 'M' }[force];
  return { letter, meaning: `${force} at the cut` };
}
