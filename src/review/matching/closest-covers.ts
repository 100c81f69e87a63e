import { isSpent, spend, type Effort } from './effort.ts';

/** One way to explain some numbers of a line: what they stand for, and what that costs. */
export interface Way<Slip> {
  /** One bit a thing of the sum, by its place. */
  readonly atoms: number;
  /** One bit a number of the line: the number itself, and others that stand for the same together with it. */
  readonly terms: number;
  readonly slips: readonly Slip[];
  readonly cost: number;
}

/** What all numbers of a line are to be explained with. */
export interface Puzzle<Slip> {
  /** By number of the line; never empty, the cheapest first. */
  readonly ways: readonly (readonly Way<Slip>[])[];
  /** What has to stand in the line: bits of the things, and what it costs to leave any of them out. */
  readonly needs: readonly { readonly atoms: number; readonly slip: Slip }[];
  /** What leaving out one need costs. */
  readonly missing: number;
  /** Bits of the things that stand in the line already. */
  readonly used: number;
  /** One text for one slip: explanations with the same slips are one explanation. */
  readonly signature: (slip: Slip) => string;
}

/** An explanation of a line: the slips in it, none for a right one. */
export interface Cover<Slip> {
  readonly slips: readonly Slip[];
  readonly cost: number;
}

/** So many explanations that cost the same are kept. */
const mostTies = 3;

const hair = 1e-9;

/** Where a search stands: numbers explained, what is used up, the slips so far. */
interface Place<Slip> {
  readonly at: number;
  readonly atoms: number;
  readonly terms: number;
  readonly cost: number;
  readonly slips: readonly Slip[];
}

interface State<Slip> {
  readonly puzzle: Puzzle<Slip>;
  readonly effort: Effort;
  /** What each number costs at the least. */
  readonly least: readonly number[];
  /** What the numbers from each place on can stand for. */
  readonly within: readonly number[];
  /** The cheapest arrivals at a place, with the slips on the way. */
  readonly arrivals: Map<string, { cost: number; signatures: Set<string> }>;
  best: number;
  found: { readonly cover: Cover<Slip>; readonly signature: string }[];
}

/**
 * The cheapest explanations of a line, all that cost the same, at most three, none that costs more
 * than `bound`. Depth first, the cheapest way first; a branch is left as soon as what it cost and
 * what the rest must cost at the least is more than the best explanation so far. Stops where the
 * effort is spent, with what was found until then.
 */
export function closestCovers<Slip>(
  puzzle: Puzzle<Slip>,
  effort: Effort,
  bound: number = Infinity,
): readonly Cover<Slip>[] {
  const { ways } = puzzle;
  // A way that takes several numbers is shared among them.
  const least = ways.map((_, at) =>
    Math.min(
      ...ways.flatMap((own) =>
        own.flatMap(({ cost, terms }) =>
          (terms & (1 << at)) === 0 ? [] : [cost / countBits(terms)],
        ),
      ),
    ),
  );
  const within = [0];
  for (const own of [...ways].reverse())
    within.unshift(own.reduce((all, { atoms }) => all | atoms, within[0] ?? 0));
  const arrivals = new Map<string, { cost: number; signatures: Set<string> }>();
  const state: State<Slip> = {
    puzzle,
    effort,
    least,
    within,
    arrivals,
    best: bound,
    found: [],
  };
  visit(state, { at: 0, atoms: puzzle.used, terms: 0, cost: 0, slips: [] });
  return state.found.map(({ cover }) => cover);
}

function visit<Slip>(state: State<Slip>, place: Place<Slip>): void {
  const { puzzle, effort } = state;
  if (isSpent(effort)) return;
  const at = nextOpen(place, puzzle.ways.length);
  const own = puzzle.ways[at];
  if (own === undefined) {
    finish(state, place);
    return;
  }
  spend(effort, own.length + puzzle.needs.length);
  if (place.cost + restOf(state, place, at) > state.best + hair) return;
  if (hasBeenHere(state, place, at)) return;
  for (const { atoms, terms, slips, cost } of own) {
    if ((atoms & place.atoms) !== 0 || (terms & place.terms) !== 0) continue;
    visit(state, {
      at: at + 1,
      atoms: place.atoms | atoms,
      terms: place.terms | terms,
      cost: place.cost + cost,
      slips: slips.length === 0 ? place.slips : [...place.slips, ...slips],
    });
  }
}

/** The next number that no other has taken with it. */
function nextOpen<Slip>({ at, terms }: Place<Slip>, count: number): number {
  let next = at;
  while (next < count && (terms & (1 << next)) !== 0) next += 1;
  return next;
}

/** What the numbers that are left, and the things that none of them can stand for, cost at the least. */
function restOf<Slip>(
  { puzzle, least, within }: State<Slip>,
  { atoms, terms }: Place<Slip>,
  at: number,
): number {
  const reach = atoms | (within[at] ?? 0);
  const lost = puzzle.needs.filter((need) => (need.atoms & ~reach) !== 0).length;
  let rest = lost * puzzle.missing;
  for (let next = at; next < least.length; next += 1)
    if ((terms & (1 << next)) === 0) rest += least[next] ?? 0;
  return rest;
}

/** True where the search was here before as cheaply, and nothing new can come of it. */
function hasBeenHere<Slip>(
  { arrivals, puzzle }: State<Slip>,
  { atoms, terms, cost, slips }: Place<Slip>,
  at: number,
): boolean {
  const key = `${at} ${atoms} ${terms >> at}`;
  const signature = slips.map(puzzle.signature).sort().join('|');
  const before = arrivals.get(key);
  if (before === undefined || cost < before.cost - hair) {
    arrivals.set(key, { cost, signatures: new Set([signature]) });
    return false;
  }
  if (cost > before.cost + hair || before.signatures.has(signature)) return true;
  before.signatures.add(signature);
  return before.signatures.size > mostTies;
}

function finish<Slip>(state: State<Slip>, { atoms, cost, slips }: Place<Slip>): void {
  const { puzzle } = state;
  const left = puzzle.needs.filter((need) => (need.atoms & ~atoms) !== 0);
  const whole = cost + left.length * puzzle.missing;
  if (whole > state.best + hair) return;
  if (whole < state.best - hair) state.found = [];
  state.best = Math.min(state.best, whole);
  const all = [...slips, ...left.map(({ slip }) => slip)];
  const signature = all.map(puzzle.signature).sort().join('|');
  if (state.found.some((one) => one.signature === signature)) return;
  if (state.found.length < mostTies)
    state.found.push({ cover: { slips: all, cost: whole }, signature });
}

function countBits(mask: number): number {
  let [left, count] = [mask, 0];
  while (left !== 0) {
    left &= left - 1;
    count += 1;
  }
  return Math.max(count, 1);
}
