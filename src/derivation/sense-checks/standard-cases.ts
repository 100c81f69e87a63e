import {
  name,
  number,
  power,
  product,
  quotient,
  type Expression,
  type Statement,
} from '../../equation/index.ts';
import type { Load } from '../../statics/index.ts';
import { loadsOfCase, type CaseContext } from '../case-context.ts';
import { sizeFigure } from '../load-figures.ts';
import { tidy, value, valueText } from '../printing.ts';
import { agree, type CheckOutcome } from './check-outcome.ts';
import { simpleSpan } from './simple-span.ts';

/** What a handbook formula says of a case that it fits. */
interface HandbookCase {
  /** Its name in the trade. */
  readonly title: string;
  /** Which quantity: the greatest sagging or hogging moment. */
  readonly which: 'max' | 'min';
  /** In symbols and with numbers. */
  readonly symbolic: Expression;
  readonly numeric: Expression;
  /** Its value, N·m. */
  readonly si: number;
}

/** Formulas that every engineer's handbook tabulates; printed as from memory, since no table was at hand. */
export const handbookSource = 'beam formulas of engineering handbooks, from memory';

/** A handbook formula agrees with the moment found, where the case is one that handbooks tabulate. */
export function standardCaseChecks(context: CaseContext): readonly CheckOutcome[] {
  const fit = recognisers
    .map((recognise) => recognise(context))
    .find((found) => found !== undefined);
  if (fit === undefined) return [];
  const { printing, result } = context;
  const found = result.extremes.moment[fit.which].value;
  const symbol = {
    letter: 'M',
    subscript: fit.which,
    meaning: fit.which === 'max' ? 'greatest bending moment' : 'least bending moment',
  };
  const statement: Statement = {
    lines: [
      { left: name(symbol), chain: [{ sign: '=', of: fit.symbolic }], recheck: 'none' },
      { chain: [{ sign: '=', of: fit.numeric }] },
      { chain: [{ sign: '=', of: value(printing, 'moment', fit.si) }] },
    ],
  };
  return [
    {
      fact: {
        kind: 'check',
        check: 'standard-case',
        facts: { title: fit.title },
        statement,
        source: handbookSource,
      },
      holds: agree(found, fit.si, Math.abs(fit.si)),
      finding: `the handbook formula gives ${valueText(printing, 'moment', fit.si)} instead of ${valueText(printing, 'moment', found)}`,
    },
  ];
}

type Recogniser = (context: CaseContext) => HandbookCase | undefined;

const L: Expression = name({ letter: 'L', meaning: 'span' });

/** The one load of the case, where it is the only one and pushes straight down. */
function onlyLoad(context: CaseContext): Load | undefined {
  const [load, ...more] = loadsOfCase(context.structure, context.mark);
  return more.length > 0 ? undefined : load;
}

function near(a: number, b: number, length: number): boolean {
  return Math.abs(a - b) <= 1e-9 * length;
}

/** The span of a simple beam whose only load lies between its supports. */
function spanOf(
  context: CaseContext,
): { from: number; to: number; length: number } | undefined {
  const span = simpleSpan(context);
  if (!span?.isBetween) return undefined;
  return { from: span.left.x, to: span.right.x, length: span.right.x - span.left.x };
}

const simpleUniform: Recogniser = (context) => {
  const span = spanOf(context);
  const load = onlyLoad(context);
  if (
    span === undefined ||
    load?.kind !== 'distributed' ||
    load.x1 !== 0 ||
    load.x2 !== 0
  )
    return undefined;
  if (!near(load.from, span.from, span.length) || !near(load.to, span.to, span.length))
    return undefined;
  if (load.y1 !== load.y2 || load.y1 >= 0) return undefined;
  const w = name(context.symbols.intensity(load.id));
  const size = sizeFigure(context, load.id, 'force-per-length', -load.y1);
  const length = tidy(context.printing, 'length', span.length);
  return {
    title: 'simple beam, uniform load over the whole span',
    which: 'max',
    symbolic: quotient(product(w, power(L, 2)), number(8)),
    numeric: quotient(product(size, power(length, 2)), number(8)),
    si: (-load.y1 * span.length ** 2) / 8,
  };
};

const simplePoint: Recogniser = (context) => {
  const span = spanOf(context);
  const load = onlyLoad(context);
  if (span === undefined || load?.kind !== 'point' || load.fx !== 0 || load.fy >= 0)
    return undefined;
  const [a, b] = [load.x - span.from, span.to - load.x];
  if (a <= 0 || b <= 0) return undefined;
  const P = name(context.symbols.load(load.id));
  const size = sizeFigure(context, load.id, 'force', -load.fy);
  const length = (si: number): Expression => tidy(context.printing, 'length', si);
  if (near(a, b, span.length)) {
    return {
      title: 'simple beam, point load at midspan',
      which: 'max',
      symbolic: quotient(product(P, L), number(4)),
      numeric: quotient(product(size, length(span.length)), number(4)),
      si: (-load.fy * span.length) / 4,
    };
  }
  const [sa, sb] = [
    name({ letter: 'a', meaning: 'distance of the load from the left support' }),
    name({ letter: 'b', meaning: 'distance of the load from the right support' }),
  ];
  return {
    title: 'simple beam, point load at any place',
    which: 'max',
    symbolic: quotient(product(P, sa, sb), L),
    numeric: quotient(product(size, length(a), length(b)), length(span.length)),
    si: (-load.fy * a * b) / span.length,
  };
};

const simpleTriangle: Recogniser = (context) => {
  const span = spanOf(context);
  const load = onlyLoad(context);
  if (
    span === undefined ||
    load?.kind !== 'distributed' ||
    load.x1 !== 0 ||
    load.x2 !== 0
  )
    return undefined;
  if (!near(load.from, span.from, span.length) || !near(load.to, span.to, span.length))
    return undefined;
  const peak = Math.min(load.y1, load.y2);
  if (Math.max(load.y1, load.y2) !== 0 || peak >= 0) return undefined;
  const w = name(context.symbols.intensity(load.id));
  const size = sizeFigure(context, load.id, 'force-per-length', -peak);
  const length = tidy(context.printing, 'length', span.length);
  const under = (): Expression =>
    product(number(9), { kind: 'call', of: 'sqrt', argument: number(3) });
  return {
    title:
      'simple beam, load rising from nothing at one support to its greatest at the other',
    which: 'max',
    symbolic: quotient(product(w, power(L, 2)), under()),
    numeric: quotient(product(size, power(length, 2)), under()),
    si: (-peak * span.length ** 2) / (9 * Math.sqrt(3)),
  };
};

/** The clear length of a cantilever held at one end of the beam, with the station of its fixed end. */
function cantilever(
  context: CaseContext,
): { fixed: number; tip: number; length: number } | undefined {
  const { structure } = context;
  const [support, ...more] = structure.supports;
  if (support?.type !== 'fixed' || more.length > 0 || structure.hinges.length > 0)
    return undefined;
  const first = structure.points[0]?.x ?? 0;
  const last = structure.points.at(-1)?.x ?? 0;
  if (support.x === first) return { fixed: first, tip: last, length: last - first };
  return support.x === last
    ? { fixed: last, tip: first, length: last - first }
    : undefined;
}

const cantileverUniform: Recogniser = (context) => {
  const arm = cantilever(context);
  const load = onlyLoad(context);
  if (
    arm === undefined ||
    load?.kind !== 'distributed' ||
    load.x1 !== 0 ||
    load.x2 !== 0
  )
    return undefined;
  if (
    !near(load.to - load.from, arm.length, arm.length) ||
    load.y1 !== load.y2 ||
    load.y1 >= 0
  )
    return undefined;
  const w = name(context.symbols.intensity(load.id));
  const size = sizeFigure(context, load.id, 'force-per-length', -load.y1);
  const length = tidy(context.printing, 'length', arm.length);
  const minus = (of: Expression): Expression => ({
    kind: 'sum',
    terms: [{ sign: -1, of }],
  });
  return {
    title: 'cantilever, uniform load over the whole length',
    which: 'min',
    symbolic: minus(quotient(product(w, power(L, 2)), number(2))),
    numeric: minus(quotient(product(size, power(length, 2)), number(2))),
    si: (load.y1 * arm.length ** 2) / 2,
  };
};

const cantileverPoint: Recogniser = (context) => {
  const arm = cantilever(context);
  const load = onlyLoad(context);
  if (arm === undefined || load?.kind !== 'point' || load.fx !== 0 || load.fy >= 0)
    return undefined;
  const a = Math.abs(load.x - arm.fixed);
  if (a <= 0) return undefined;
  const P = name(context.symbols.load(load.id));
  const size = sizeFigure(context, load.id, 'force', -load.fy);
  const minus = (of: Expression): Expression => ({
    kind: 'sum',
    terms: [{ sign: -1, of }],
  });
  return {
    title: 'cantilever, point load',
    which: 'min',
    symbolic: minus(
      product(
        P,
        name({ letter: 'a', meaning: 'distance of the load from the fixed end' }),
      ),
    ),
    numeric: minus(product(size, tidy(context.printing, 'length', a))),
    si: load.fy * a,
  };
};

const recognisers: readonly Recogniser[] = [
  simpleUniform,
  simplePoint,
  simpleTriangle,
  cantileverUniform,
  cantileverPoint,
];
