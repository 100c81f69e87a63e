import type { Sum } from '../../statics/index.ts';
import { worthOf, type Atom } from './atoms.ts';
import { isClose, standsFor } from './closeness.ts';
import { groupsOf, type Group } from './groups.ts';
import { costs, slipsOf, type Slip } from './slips.ts';
import type { WorkerTerm } from './worker-terms.ts';

/** An explanation of a line: the slips in it, none for a right one. */
export interface Match {
  readonly slips: readonly Slip[];
  readonly cost: number;
}

/** A line and the sum that it is to be, brought to one scale. */
export interface Matching {
  readonly terms: readonly WorkerTerm[];
  readonly atoms: readonly Atom[];
  readonly sum: Sum;
  /** What the line is multiplied by: −1 where every sign is turned, one over an arm for `R = …`. */
  readonly scale: number;
  /** What the worker found for unknowns before, by key. */
  readonly concluded: ReadonlyMap<string, number>;
}

/** A way through the numbers so far: what is given away, and the slips that it took. */
interface Option {
  readonly mask: number;
  readonly slips: readonly Slip[];
  readonly cost: number;
}

/** Steps of the search after which the best explanation so far is taken. */
const patience = 5_000;

/**
 * The cheapest explanations of a line, all of those that cost the same, at most three. First the
 * unknowns are paired by name; then each number is given to what it may stand for: things that
 * add just that (costing nothing), the same with a slip, or nothing at all; what is left over is
 * missing.
 */
export function matchTerms(matching: Matching): readonly Match[] {
  const named = pairUnknowns(matching);
  const numbers = matching.terms
    .filter(({ unknown }) => unknown === undefined)
    .sort((a, b) => Math.abs(b.constant) - Math.abs(a.constant));
  const search = new Search(matching, named.used, numbers);
  return search.run().map(({ slips, cost }) => ({
    slips: [...named.slips, ...slips],
    cost: cost + named.cost,
  }));
}

interface Named {
  readonly slips: readonly Slip[];
  readonly cost: number;
  /** Atoms that stand in the line by name. */
  readonly used: number;
}

function pairUnknowns({ terms, atoms, scale }: Matching): Named {
  const shares = new Map<string, { share: number; term: WorkerTerm }>();
  for (const term of terms) {
    if (term.unknown === undefined) continue;
    const { key, share } = term.unknown;
    const before = shares.get(key);
    shares.set(key, {
      share: (before?.share ?? 0) + share / scale,
      term: before?.term ?? term,
    });
  }
  const slips: Slip[] = [];
  let used = 0;
  for (const [key, { share, term }] of shares) {
    const index = atoms.findIndex((atom) => atom.key === key);
    const atom = atoms[index];
    if (atom === undefined) {
      slips.push({ kind: 'extra-term', cost: costs.extra, term, atoms: [] });
      continue;
    }
    used |= 1 << index;
    slips.push(...shareSlips(share, term, atom));
  }
  const cost = slips.reduce((all, slip) => all + slip.cost, 0);
  return { slips, cost, used };
}

function shareSlips(share: number, term: WorkerTerm, atom: Atom): readonly Slip[] {
  const { factor } = atom;
  const atoms = [atom];
  const isAgainst = share * factor < 0;
  const turned: readonly Slip[] = isAgainst
    ? [{ kind: 'sign', cost: costs.sign, term, atoms }]
    : [];
  if (isClose(Math.abs(share), Math.abs(factor))) return turned;
  const taken = Math.abs(share);
  // In a sum of forces an unknown stands whole: another share of it is another size.
  const kind = atom.quantity === 'force' ? 'lever-arm' : 'magnitude';
  return [...turned, { kind, cost: costs.arm, term, atoms, taken }];
}

/** Depth first over the numbers of a line, the best explanations kept. */
class Search {
  private readonly matching: Matching;
  private readonly named: number;
  private readonly numbers: readonly WorkerTerm[];
  private readonly worths: readonly number[];
  private readonly groups: readonly Group[];
  private best = Infinity;
  private found: Match[] = [];
  private steps = 0;

  constructor(matching: Matching, named: number, numbers: readonly WorkerTerm[]) {
    this.matching = matching;
    this.named = named;
    this.numbers = numbers;
    // An unknown that stands as a number is what the worker found for it, else what it truly is.
    this.worths = matching.atoms.map((atom) => {
      const own = atom.key === undefined ? undefined : matching.concluded.get(atom.key);
      return own === undefined ? worthOf(atom) : own * atom.factor;
    });
    this.groups = groupsOf(matching.atoms, this.worths).filter(
      ({ mask }) => (mask & named) === 0,
    );
  }

  run(): readonly Match[] {
    this.visit(0, { mask: this.named, slips: [], cost: 0 });
    return this.found;
  }

  private visit(at: number, so: Option): void {
    const { mask: used, slips, cost } = so;
    this.steps += 1;
    if (cost > this.best + 1e-9 || this.steps > patience) return;
    const term = this.numbers[at];
    if (term === undefined) {
      this.finish(so);
      return;
    }
    for (const option of this.optionsFor(term, used))
      this.visit(at + 1, {
        mask: used | option.mask,
        slips: [...slips, ...option.slips],
        cost: cost + option.cost,
      });
  }

  private optionsFor(term: WorkerTerm, used: number): readonly Option[] {
    const written = term.constant / this.matching.scale;
    const free = this.groups.filter(({ mask }) => (mask & used) === 0);
    const whole = free.flatMap(({ mask, count, worth }): readonly Option[] => {
      // Lumping is no slip; its small price makes the plainest reading come first.
      const lump = costs.lump * (count - 1);
      if (standsFor(written, worth, term.spread))
        return [{ mask, slips: [], cost: lump }];
      if (!standsFor(written, -worth, term.spread)) return [];
      const slip = {
        kind: 'sign',
        cost: costs.sign,
        term,
        atoms: this.atomsIn(mask),
      } as const;
      return [{ mask, slips: [slip], cost: lump + slip.cost }];
    });
    const slipped = this.matching.atoms.flatMap((atom, index): readonly Option[] => {
      const mask = 1 << index;
      if ((mask & used) !== 0) return [];
      const slips = slipsOf(term, written, atom, this.matching.sum);
      return slips === undefined ? [] : [{ mask, slips, cost: priceOf(slips) }];
    });
    const extra = { kind: 'extra-term', cost: costs.extra, term, atoms: [] } as const;
    const all = [...whole, ...slipped, { mask: 0, slips: [extra], cost: extra.cost }];
    return all.sort((a, b) => a.cost - b.cost);
  }

  private atomsIn(mask: number): readonly Atom[] {
    return this.matching.atoms.filter((_, index) => (mask & (1 << index)) !== 0);
  }

  private finish({ mask, slips, cost: soFar }: Option): void {
    const missing = this.missing(mask);
    const all = [...slips, ...missing];
    const cost = soFar + priceOf(missing);
    if (cost > this.best + 1e-9) return;
    if (cost < this.best - 1e-9) this.found = [];
    this.best = Math.min(this.best, cost);
    const signature = signatureOf(all);
    const isNew = this.found.every((one) => signatureOf(one.slips) !== signature);
    if (isNew && this.found.length < 3) this.found.push({ slips: all, cost });
  }

  /** What acts and stands nowhere in the line; the shapes of one load are one thing. */
  private missing(used: number): readonly Slip[] {
    const size = Math.max(0, ...this.worths.map(Math.abs));
    const byThing = new Map<string, Atom[]>();
    for (const [index, atom] of this.matching.atoms.entries()) {
      const isUsed = (used & (1 << index)) !== 0;
      const isNothing = Math.abs(this.worths[index] ?? 0) <= 1e-9 * size;
      if (isUsed || isNothing || Math.abs(atom.factor) <= 1e-12) continue;
      const thing = atom.what.kind === 'load' ? `load ${atom.what.id}` : atom.id;
      byThing.set(thing, [...(byThing.get(thing) ?? []), atom]);
    }
    return [...byThing.values()].map((atoms) => ({
      kind: 'missing-term',
      cost: costs.missing,
      atoms,
    }));
  }
}

function priceOf(slips: readonly Slip[]): number {
  return slips.reduce((all, slip) => all + slip.cost, 0);
}

/** One text for one explanation. */
function signatureOf(slips: readonly Slip[]): string {
  return JSON.stringify(
    slips.map(({ kind, term, atoms }) => [
      kind,
      term?.start,
      atoms.map(({ id }) => id),
    ]),
  );
}
