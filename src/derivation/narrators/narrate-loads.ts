import {
  call,
  cancelUnits,
  name,
  number,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type StatementLine,
} from '../../equation/index.ts';
import type { BeamLoad } from '../../project/index.ts';
import type { Resultant, SumTerm } from '../../statics/index.ts';
import { loadOf, loadsOfCase, keyOfShape, type CaseContext } from '../case-context.ts';
import { acuteAngle, asDirection, wordsOfDirection } from '../direction.ts';
import {
  componentSymbol,
  forceFigure,
  isAlongAxis,
  isWorkedOut,
} from '../load-figures.ts';
import { asGiven, isInProjectUnit, tidy, value } from '../printing.ts';
import type { EquationStep } from '../steps.ts';
import { centroidSymbol } from '../symbols.ts';
import { placeAtStation } from './places.ts';
import { heightOf, ordinatesOf } from './ordinates.ts';

/** Preparing the loads of a case for its sums: other units converted, spread loads replaced, slanted forces resolved. */
export function narrateLoads(
  context: CaseContext,
  terms: readonly SumTerm[],
): readonly EquationStep[] {
  const converted = loadsOfCase(context.structure, context.mark).flatMap(({ id }) =>
    convert(context, id),
  );
  const conversions: readonly EquationStep[] =
    converted.length === 0
      ? []
      : [{ kind: 'conversion', statement: { lines: converted } }];
  const seen = new Set<string>();
  const isNew = (key: string): boolean => {
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  };
  const prepared = terms.flatMap((term): readonly EquationStep[] => {
    if (term.source.kind !== 'load') return [];
    const key = `${term.source.id} ${term.resultant === undefined ? '' : keyOfShape(term.resultant)}`;
    return isNew(key)
      ? [...replace(context, term, isNew), ...resolve(context, term)]
      : [];
  });
  return [...conversions, ...prepared];
}

/** A given size in another unit than the sums use, brought into it: `P₁ = 1,250 lb = 1.25 kip`. */
function convert(context: CaseContext, id: string): readonly StatementLine[] {
  const defined = context.defined.get(id);
  if (defined === undefined || defined.factor !== undefined || isWorkedOut(defined))
    return [];
  const what = unitOfLoad(defined);
  const sizes =
    defined.kind === 'distributed' ? [...new Set(defined.sizes)] : [defined.size];
  const symbol =
    defined.kind === 'distributed'
      ? context.symbols.intensity(id)
      : context.symbols.load(id);
  return sizes
    .filter((size) => size.si !== 0 && !isInProjectUnit(context.printing, what, size))
    .slice(0, sizes[0]?.si === sizes[1]?.si ? 1 : 2)
    .map((size) => ({
      left: name(symbol),
      chain: [
        { sign: '=', of: asGiven(size) },
        { sign: '=', of: tidy(context.printing, what, size.si) },
      ],
    }));
}

/** What a load's size measures. */
export function unitOfLoad(load: BeamLoad): 'force' | 'moment' | 'force-per-length' {
  if (load.kind === 'point') return 'force';
  return load.kind === 'couple' ? 'moment' : 'force-per-length';
}

/** A spread load, or a shape of it, replaced by its resultant: size and place worked out. */
function replace(
  context: CaseContext,
  term: SumTerm,
  isNew: (key: string) => boolean,
): readonly EquationStep[] {
  const { resultant, source } = term;
  if (resultant === undefined || source.kind !== 'load') return [];
  const share = context.shareOf(source.id, resultant);
  return [
    {
      kind: 'resultant',
      symbol: context.symbols.load(source.id, share),
      of: context.symbols.intensity(source.id),
      shape: resultant.shape,
      isShare: share !== '',
      from: placeAtStation(context, resultant.from),
      to: placeAtStation(context, resultant.to),
      direction: wordsOfDirection(resultant.direction),
      ordinates: ordinatesOf(context, source.id, resultant).filter(({ x }) =>
        isNew(`${source.id} at ${x}`),
      ),
      size: sizeStatement(context, source.id, share, resultant),
      place: placeStatement(context, source.id, share, resultant),
    },
  ];
}

function sizeStatement(
  context: CaseContext,
  id: string,
  share: string,
  resultant: Resultant,
): Statement {
  const { printing } = context;
  const base = tidy(printing, 'length', resultant.to - resultant.from);
  const symbols: readonly Expression[] = [
    name(context.symbols.intensity(id, share)),
    name({
      letter: 'b',
      subscript: `${context.symbols.numberOf(id)}${share}`,
      meaning: 'loaded length',
    }),
  ];
  const half = (factors: readonly Expression[]): Expression =>
    resultant.shape === 'triangle'
      ? product(quotient(number(1), number(2)), ...factors)
      : product(...factors);
  return {
    lines: [
      {
        left: name(context.symbols.load(id, share)),
        chain: [{ sign: '=', of: half(symbols) }],
        recheck: 'none',
      },
      {
        chain: [
          {
            sign: '=',
            of: cancelUnits(half([heightOf(context, id, resultant), base])),
          },
        ],
      },
      { chain: [{ sign: '=', of: value(printing, 'force', resultant.magnitude) }] },
    ],
  };
}

/** The line of action: the middle of a rectangle, a third of a triangle's base from its greater end. */
function placeStatement(
  context: CaseContext,
  id: string,
  share: string,
  resultant: Resultant,
): Statement {
  const { printing } = context;
  const length = (si: number): Expression => tidy(printing, 'length', si);
  const base = length(resultant.to - resultant.from);
  const offset: Expression =
    resultant.shape === 'rectangle'
      ? quotient(base, number(2))
      : resultant.end > resultant.start
        ? quotient(product(number(2), base), number(3))
        : quotient(base, number(3));
  const worked = resultant.from === 0 ? offset : sum(length(resultant.from), offset);
  const number_ = `${context.symbols.numberOf(id)}${share}`;
  return {
    lines: [
      {
        left: name(centroidSymbol(number_)),
        chain: [
          { sign: '=', of: worked },
          { sign: '=', of: length(resultant.x) },
        ],
      },
    ],
  };
}

/** A slanted force taken into the sizes of its parts along x and y, each with the way it points. */
function resolve(context: CaseContext, term: SumTerm): readonly EquationStep[] {
  const { source } = term;
  if (source.kind !== 'load' || term.quantity === 'couple') return [];
  const direction = directionOf(context, term);
  if (isAlongAxis(direction)) return [];
  const share =
    term.resultant === undefined ? '' : context.shareOf(source.id, term.resultant);
  const symbol = context.symbols.load(source.id, share);
  const size = forceFigure(context, loadOf(context.structure, source.id), term);
  const angle = acuteAngle(context.printing, direction);
  const lines = (['x', 'y'] as const).map((axis) => {
    const cosine = axis === 'x' ? direction[0] : direction[1];
    return {
      left: name(componentSymbol(symbol, axis)),
      chain: [
        {
          sign: '=' as const,
          of: product(size, call(axis === 'x' ? 'cos' : 'sin', angle)),
        },
        {
          sign: '=' as const,
          of: value(
            context.printing,
            'force',
            (term.magnitude ?? 0) * Math.abs(cosine),
          ),
        },
      ],
    };
  });
  const [dx, dy] = direction;
  return [
    {
      kind: 'components',
      symbol,
      direction: asDirection(context.printing, direction),
      angle,
      x: dx > 0 ? 'right' : 'left',
      y: dy > 0 ? 'up' : 'down',
      statement: { lines },
    },
  ];
}

function directionOf(
  { structure }: CaseContext,
  term: SumTerm,
): readonly [number, number] {
  if (term.resultant !== undefined) return term.resultant.direction;
  if (term.source.kind !== 'load') return [0, -1];
  const load = loadOf(structure, term.source.id);
  if (load.kind !== 'point') return [0, -1];
  const size = Math.hypot(load.fx, load.fy);
  return size === 0 ? [0, -1] : [load.fx / size, load.fy / size];
}
