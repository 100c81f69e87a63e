import type { Piece, Piecewise } from '../piecewise.ts';
import { shiftOrigin, trim, type Polynomial } from '../piecewise/polynomial.ts';
import type { RangeQuery } from '../solution.ts';
import { dropNoise, stationTolerance } from '../tolerances.ts';
import type { BasisBar, InfluenceBasis, ReactionComponent } from './influence-basis.ts';
import { joinPieces } from './join-pieces.ts';

/** An effect whose influence line is asked for. */
export type Effect =
  | {
      readonly kind: 'reaction';
      readonly point: string;
      readonly component: ReactionComponent;
    }
  | ({ readonly kind: 'station' } & Pick<RangeQuery, 'of' | 'x' | 'side'>);

/**
 * The influence line of an effect: what a downward load of 1 N gives, as a function of the load's
 * station; N, N·m, rad or m, signs as for results. Exact; the shear at a station leaps by 1 there.
 *
 * @throws RangeError where the support does not give the component, or the station is not on the beam.
 */
export function influenceLine(basis: InfluenceBasis, effect: Effect): Piecewise {
  return joinPieces(
    effect.kind === 'reaction'
      ? reactionPieces(basis, effect)
      : stationPieces(basis, effect),
  );
}

function reactionPieces(
  { bars, reactions }: InfluenceBasis,
  { point, component }: Extract<Effect, { kind: 'reaction' }>,
): readonly Piece[] {
  const polynomials = reactions.find((one) => one.point === point)?.[component];
  if (polynomials === null || polynomials === undefined)
    throw new RangeError(`no ${component} reaction at ${point}`);
  return bars.map(({ from, to }, index) => ({
    start: from,
    end: to,
    coefficients: polynomials[index] ?? [0],
  }));
}

function stationPieces(
  basis: InfluenceBasis,
  { of, x, side }: Extract<Effect, { kind: 'station' }>,
): readonly Piece[] {
  const { bars } = basis;
  const here = barAt(basis, x, side);
  const bar = bars[here];
  if (bar === undefined) throw new RangeError(`station ${x} is not on the beam`);
  const s = Math.min(Math.max(x, bar.from), bar.to) - bar.from;
  const size = (bars.at(-1)?.to ?? 0) - (bars[0]?.from ?? 0);
  return bars.flatMap(({ from, to }, place): readonly Piece[] => {
    const beyond = sumOf(startTerms(bar, place, { of, s }));
    if (place !== here) return [{ start: from, end: to, coefficients: beyond }];
    const passed = sumOf([...startTerms(bar, place, { of, s }), loadTerm(bar, of, s)]);
    const station = from + s;
    const margin = stationTolerance * size;
    if (s <= margin) return [{ start: from, end: to, coefficients: beyond }];
    if (to - station <= margin) return [{ start: from, end: to, coefficients: passed }];
    return [
      { start: from, end: station, coefficients: passed },
      { start: station, end: to, coefficients: shiftOrigin(beyond, s) },
    ];
  });
}

/** The bar that a station is in, coming from a side. */
function barAt({ bars }: InfluenceBasis, x: number, side: RangeQuery['side']): number {
  const [first, last] = [bars[0]?.from ?? NaN, bars.at(-1)?.to ?? NaN];
  const margin = stationTolerance * (last - first);
  if (!(x >= first - margin && x <= last + margin)) return -1;
  const found = bars.findIndex(({ to }) =>
    side === 'left' ? x <= to + margin : x < to - margin,
  );
  return found < 0 ? bars.length - 1 : found;
}

/** A polynomial of the load's place and what it is multiplied by. */
interface Term {
  readonly factor: number;
  readonly polynomial: Polynomial;
}

/** What the bar's start brings to a station s beyond it, the load being in the bar `place`. */
function startTerms(
  { start, EI = NaN }: BasisBar,
  place: number,
  { of, s }: { readonly of: RangeQuery['of']; readonly s: number },
): readonly Term[] {
  const term = (name: RangeQuery['of'], factor: number): Term => ({
    factor,
    polynomial: start[name][place] ?? [0],
  });
  switch (of) {
    case 'axial':
    case 'shear':
      return [term(of, 1)];
    case 'moment':
      return [term('moment', 1), term('shear', s)];
    case 'slope':
      return [
        term('slope', 1),
        term('moment', s / EI),
        term('shear', (s * s) / (2 * EI)),
      ];
    case 'deflection':
      return [
        term('deflection', 1),
        term('slope', s),
        term('moment', (s * s) / (2 * EI)),
        term('shear', (s * s * s) / (6 * EI)),
      ];
  }
}

/** What the load itself adds once it stands left of the station: −1, −(s − t) and their integrals over EI, t being its place in the bar. */
function loadTerm({ EI = NaN }: BasisBar, of: RangeQuery['of'], s: number): Term {
  switch (of) {
    case 'axial':
      return { factor: 0, polynomial: [0] };
    case 'shear':
      return { factor: -1, polynomial: [1] };
    case 'moment':
      return { factor: -1, polynomial: [s, -1] };
    case 'slope':
      return { factor: -1 / (2 * EI), polynomial: [s * s, -2 * s, 1] };
    case 'deflection':
      return {
        factor: -1 / (6 * EI),
        polynomial: [s * s * s, -3 * s * s, 3 * s, -1],
      };
  }
}

function sumOf(terms: readonly Term[]): Polynomial {
  const count = Math.max(1, ...terms.map(({ polynomial }) => polynomial.length));
  return trim(
    Array.from({ length: count }, (_, power) => {
      let [value, size] = [0, 0];
      for (const { factor, polynomial } of terms) {
        const addend = factor * (polynomial[power] ?? 0);
        value += addend;
        size += Math.abs(addend);
      }
      return dropNoise(value, size) + 0;
    }),
  );
}
