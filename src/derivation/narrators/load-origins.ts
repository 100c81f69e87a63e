import {
  call,
  cancelUnits,
  name,
  number,
  product,
  withConversion,
  type Expression,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import type { BeamLoad } from '../../project/index.ts';
import { displayUnit, type GivenQuantity } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { acuteAngle } from '../direction.ts';
import { isWorkedOut } from '../load-figures.ts';
import { asGiven, tidy, value } from '../printing.ts';
import type { OriginFact } from '../steps.ts';
import { unitOfLoad } from './narrate-loads.ts';

/** A slanted load given per length square to its direction, brought to a length of beam: `w = 3 kN/m sin(60°)`. */
export function projectedFact(
  context: MemberContext,
  load: BeamLoad,
  symbol: Symbol,
): Statement | undefined {
  if (load.kind !== 'distributed' || load.per !== 'projection') return undefined;
  const { printing } = context;
  const angle = (load.direction.degrees * Math.PI) / 180;
  const slant = acuteAngle(printing, [Math.cos(angle), Math.sin(angle)]);
  const sine = Math.abs(Math.sin(slant.quantity.si));
  if (Math.abs(sine - 1) < 1e-12) return undefined;
  const factor = load.factor?.factor ?? 1;
  const lines = endsOf(load).map((size) => {
    const given = tidy(printing, 'force-per-length', factor * size.si);
    const worked = tidy(printing, 'force-per-length', factor * size.si * sine);
    return {
      left: name(symbol),
      chain: [
        { sign: '=' as const, of: product(given, call('sin', slant)) },
        { sign: '=' as const, of: worked },
      ],
    };
  });
  return { lines };
}

/** The sizes of a load that differ: one, or those at its two ends. */
function endsOf(load: BeamLoad): readonly GivenQuantity[] {
  if (load.kind !== 'distributed') return [load.size];
  const [start, end] = load.sizes;
  return start.si === end.si ? [start] : [start, end];
}

/** As given; a product of the program's own (area load, self-weight) rounded like any result. */
export function sizeAsPrinted(
  { printing }: MemberContext,
  load: BeamLoad,
  size: GivenQuantity,
): Expression {
  return isWorkedOut(load)
    ? tidy(printing, 'force-per-length', size.si)
    : asGiven(size);
}

/** Where a load comes from, with the product that makes its size; undefined for one that is given as such. */
export function originOf(
  context: MemberContext,
  load: BeamLoad,
  symbol: Symbol,
): OriginFact | undefined {
  const from = load.from;
  if (from === undefined || load.kind !== 'distributed') return undefined;
  if (from.kind === 'self-weight') {
    return {
      kind: 'self-weight',
      ...(from.how === 'section-weight'
        ? {}
        : { product: selfWeight(context, symbol, load) }),
    };
  }
  const [first, second] = from.widths;
  const widths = first.si === second.si ? [first] : [first, second];
  const unit = displayUnit(context.printing.system, 'force-per-length');
  const lines = widths.map((width, index) => ({
    left: name(symbol),
    chain: [
      {
        sign: '=' as const,
        of: cancelUnits(
          withConversion(product(asGiven(from.pressure), asGiven(width)), unit),
        ),
      },
      {
        sign: '=' as const,
        of: tidy(
          context.printing,
          'force-per-length',
          load.sizes[index === 0 ? 0 : 1].si,
        ),
      },
    ],
  }));
  return { kind: 'area', area: from.area, product: { lines } };
}

/** Area times weight per volume of the stretch that the load lies on. */
function selfWeight(
  { definition, printing }: MemberContext,
  symbol: Symbol,
  load: Spread,
): Statement {
  const stretch =
    definition.sections.find(({ from }) => from.x === load.start.x) ??
    definition.sections[0];
  const factors = [stretch?.section.A, definition.material?.density].flatMap((q) =>
    q === undefined ? [] : [asGiven(q)],
  );
  const unit = displayUnit(printing.system, 'force-per-length');
  return {
    lines: [
      {
        left: name(symbol),
        chain: [
          { sign: '=', of: cancelUnits(withConversion(product(...factors), unit)) },
          { sign: '=', of: value(printing, 'force-per-length', load.sizes[0].si) },
        ],
      },
    ],
  };
}

type Spread = Extract<BeamLoad, { kind: 'distributed' }>;

/** The size after a factor with its reason: `w = 0.82 (0.4 kip/ft) = 0.328 kip/ft`. */
export function factored(
  context: MemberContext,
  load: BeamLoad,
  symbol: Symbol,
): Statement {
  const factor = load.factor?.factor ?? 1;
  return {
    lines: endsOf(load).map((size) => ({
      left: name(symbol),
      chain: [
        {
          sign: '=' as const,
          of: product(number(factor), sizeAsPrinted(context, load, size)),
        },
        {
          sign: '=' as const,
          of: tidy(context.printing, unitOfLoad(load), factor * size.si),
        },
      ],
    })),
  };
}
