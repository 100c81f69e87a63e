import type { Sum } from '../../statics/index.ts';
import type { Atom } from './atoms.ts';
import type { Way } from './closest-covers.ts';
import { isCloseIn, isRounded, standsFor } from './closeness.ts';
import { spend, type Effort } from './effort.ts';
import type { Group } from './groups.ts';
import { costs, isPlainMoment, priceOfSize, slipsOf, type Slip } from './slips.ts';
import type { TermPart, WorkerTerm } from './worker-terms.ts';

/** A number of a line, brought to the scale of the sum. */
export interface WrittenNumber {
  readonly term: WorkerTerm;
  /** What it adds to the sum, N or N·m. */
  readonly value: number;
}

/** What the numbers of a line may stand for. */
export interface Choice {
  readonly atoms: readonly Atom[];
  readonly groups: readonly Group[];
  readonly sum: Sum;
  readonly effort: Effort;
}

/** Numbers beyond these are put together in pairs only, not in threes. */
const mostThrees = 12;

/** Looking for the slip between a number and a thing takes about as long as so many comparisons. */
const comparisonsASlip = 5;

/** For each number all that it may stand for, with the slips that it takes, the cheapest first. */
export function waysOf(
  numbers: readonly WrittenNumber[],
  choice: Choice,
): readonly (readonly Way<Slip>[])[] {
  const splits = splitsOf(numbers, choice);
  return numbers.map((number, at) => {
    const { term } = number;
    const extra = { kind: 'extra-term', cost: costs.extra, term, atoms: [] } as const;
    const terms = 1 << at;
    const none = { atoms: 0, terms, slips: [extra], cost: extra.cost };
    const { effort, groups, atoms } = choice;
    if (!spend(effort, groups.length + comparisonsASlip * atoms.length)) return [none];
    const own = [
      ...groupWays(number, choice).map((way) => ({ ...way, terms })),
      ...slippedWays(number, choice).map((way) => ({ ...way, terms })),
      ...splits.filter((split) => firstOf(split.terms) === at),
      none,
    ];
    return own.filter(isLikely).sort((a, b) => a.cost - b.cost);
  });
}

/** A size out by more than about seven times is not the size of this thing but of another, or of nothing. */
function isLikely({ slips }: Way<Slip>): boolean {
  return slips.every(({ cost }) => cost <= costs.extra);
}

type OneWay = Omit<Way<Slip>, 'terms'>;

/** What a number stands for exactly, or with its sign turned: one thing, or several lumped. */
function groupWays(
  { term, value }: WrittenNumber,
  { groups, atoms, sum }: Choice,
): readonly OneWay[] {
  const isLump = sum.kind === 'forces' || isPlainMoment(term);
  const own = term.parts.find(({ dimension, unit }) => dimension?.force === 1 && unit);
  return groups.flatMap(({ mask, count, worth, isWhole }): readonly OneWay[] => {
    const isUnknown = count === 1 && atomsIn(atoms, mask)[0]?.key !== undefined;
    const stands = (one: number): boolean =>
      standsFor(value, one, term.spread) ||
      (isUnknown && own !== undefined && isCarriedOver(value, one, own));
    // Lumping is no slip; its small price makes the plainest reading come first.
    const lump = costs.lump * (count - 1);
    if (stands(worth)) return [{ atoms: mask, slips: [], cost: lump }];
    const of = { term, atoms: atomsIn(atoms, mask) };
    if (stands(-worth)) {
      const slip = { kind: 'sign', cost: costs.sign, ...of } as const;
      return [{ atoms: mask, slips: [slip], cost: lump + slip.cost }];
    }
    if (!isLump || !isWhole || count < 2 || value * worth <= 0) return [];
    const slip = lumpSlip(Math.abs(value), Math.abs(worth), of);
    return [{ atoms: mask, slips: [slip], cost: lump + slip.cost }];
  });
}

/** True where a number repeats what was found for an unknown, with a figure more or less in the unit that it is written in. */
function isCarriedOver(value: number, worth: number, part: TermPart): boolean {
  const { size, unit = 1 } = part;
  return isCloseIn(unit, size, (size * worth) / value);
}

/** A number for several things together that is not what they come to. */
function lumpSlip(
  taken: number,
  belongs: number,
  of: Pick<Slip, 'term' | 'atoms'>,
): Slip {
  const [atom] = of.atoms;
  const [part, ...others] = of.term?.parts ?? [];
  const unit = others.length === 0 ? part?.unit : undefined;
  const isForce = part?.dimension?.length === 0 && atom?.quantity === 'force';
  const sizes = { measure: isForce ? 'force' : 'moment', taken, belongs } as const;
  return isRounded(taken, belongs, unit)
    ? { kind: 'rounding', cost: costs.rounding, ...of, ...sizes }
    : { kind: 'magnitude', cost: priceOfSize(taken / belongs), ...of, ...sizes };
}

function slippedWays(
  { term, value }: WrittenNumber,
  { atoms, sum }: Choice,
): readonly OneWay[] {
  return atoms.flatMap((atom, index): readonly OneWay[] => {
    const slips = slipsOf(term, value, atom, sum);
    if (slips === undefined) return [];
    return [{ atoms: 1 << index, slips, cost: priceOf(slips) }];
  });
}

/** Two or three numbers that stand for one thing, or for all shapes of a load, together. */
function splitsOf(
  numbers: readonly WrittenNumber[],
  { groups, effort }: Choice,
): readonly Way<Slip>[] {
  const wholes = groups.filter(({ isWhole }) => isWhole);
  const sets = setsOf(numbers.length, numbers.length <= mostThrees);
  return sets.flatMap((set): readonly Way<Slip>[] => {
    if (!spend(effort, wholes.length)) return [];
    const own = set.flatMap((at) => numbers[at] ?? []);
    const value = own.reduce((sum, one) => sum + one.value, 0);
    const size = own.reduce((sum, one) => sum + Math.abs(one.value), 0);
    // Numbers that nearly cancel stand for nothing that can be told.
    if (Math.abs(value) < 0.05 * size) return [];
    const spread = Math.max(...own.map(({ term }) => term.spread));
    const terms = set.reduce((all, at) => all | (1 << at), 0);
    return wholes.flatMap(({ mask, count, worth }) =>
      standsFor(value, worth, spread)
        ? [
            {
              atoms: mask,
              terms,
              slips: [],
              cost: costs.split * (set.length - 1) + costs.lump * (count - 1),
            },
          ]
        : [],
    );
  });
}

/** Any two of so many, and any three. */
function setsOf(count: number, hasThrees: boolean): readonly (readonly number[])[] {
  const all = Array.from({ length: count }, (_, at) => at);
  return all.flatMap((a) =>
    all
      .slice(a + 1)
      .flatMap((b) => [
        [a, b],
        ...(hasThrees ? all.slice(b + 1).map((c) => [a, b, c]) : []),
      ]),
  );
}

function firstOf(mask: number): number {
  return 31 - Math.clz32(mask & -mask);
}

function atomsIn(atoms: readonly Atom[], mask: number): readonly Atom[] {
  return atoms.filter((_, index) => (mask & (1 << index)) !== 0);
}

/** What slips cost together. */
export function priceOf(slips: readonly Slip[]): number {
  return slips.reduce((all, slip) => all + slip.cost, 0);
}
