import {
  cancelUnits,
  name,
  product,
  quotient,
  withConversion,
  type Expression,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import type { BeamTemperature } from '../../project/index.ts';
import { displayUnit, powerOfUnit, pureUnit, type Unit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { asGiven, tidy, value } from '../printing.ts';
import type { DisplacementStep } from '../steps.ts';
import type { Bending } from './bending.ts';
import { bendingFigure } from './bending-units.ts';
import { curvaturesOf, curvatureSymbol } from './curvature-terms.ts';
import { exactZeroOr, tidyIn } from './exact-figure.ts';
import { stiffnessParts, type StiffnessPart } from './stiffness-along.ts';
import { inertiaSymbol, modulusSymbol, rigiditySymbols } from './stiffness-symbols.ts';
import { ratioSymbol } from './stretch-factor.ts';

/** E I of every stretch, the ratios where it steps, and the curvatures of warmth. */
export function narrateRigidity(
  context: CaseContext,
  bending: Bending,
): DisplacementStep {
  const parts = stiffnessParts(context.structure);
  const others = parts.filter(({ EI }) => EI !== bending.EI);
  return {
    kind: 'curve-rigidity',
    stretches: parts.map((part) => ({
      from: placeAtStation(context, part.from),
      to: placeAtStation(context, part.to),
      statement: rigidityOf(context, part, parts.length > 1),
    })),
    ratios: others.map((part) => ratioOf(context, part, bending)),
    curvatures: curvaturesOf(context).map((free) => ({
      from: placeAtStation(context, free.from),
      to: placeAtStation(context, free.to),
      statement: curvatureStatement(context, free, bending),
    })),
  };
}

/** `E I = 29000 ksi (204 in⁴)/(12 in/ft)² = 41080 kip·ft²`. */
function rigidityOf(
  context: CaseContext,
  part: StiffnessPart,
  isOneOfSeveral: boolean,
): Statement {
  const { definition, printing } = context;
  const found = bendingFigure(printing, 1, part.EI);
  const E = definition.material?.E;
  const I = definition.sections.find(
    ({ to, from }) => from.x <= part.from + 1e-9 && to.x > part.from + 1e-9,
  )?.section.I;
  const left = product(
    name(modulusSymbol),
    name(inertiaSymbol(isOneOfSeveral ? part.number : undefined)),
  );
  const boxed = { sign: '=' as const, of: found };
  if (E === undefined || I === undefined)
    return { lines: [{ left, chain: [boxed], recheck: 'none' }] };
  const worked = withConversion(product(asGiven(E), asGiven(I)), found.unit);
  return { lines: [{ left, chain: [{ sign: '=', of: cancelUnits(worked) }, boxed] }] };
}

function ratioOf(
  { structure, printing }: CaseContext,
  part: StiffnessPart,
  bending: Bending,
): Statement {
  const [E, I] = rigiditySymbols({ structure }, bending.from);
  const here = [name(modulusSymbol), name(inertiaSymbol(part.number))];
  const rigidity = (si: number): Expression => bendingFigure(printing, 1, si);
  return {
    lines: [
      {
        left: name(ratioSymbol(part.number)),
        chain: [
          { sign: '=', of: quotient(product(name(E), name(I)), product(...here)) },
        ],
        recheck: 'none',
      },
      {
        chain: [
          { sign: '=', of: quotient(rigidity(bending.EI), rigidity(part.EI)) },
          { sign: '=', of: tidyIn(printing, pureUnit, bending.EI / part.EI) },
        ],
      },
    ],
  };
}

/** The unit of a curvature: 1/ft or 1/m. */
export function curvatureUnit(context: CaseContext): Unit {
  return powerOfUnit(displayUnit(context.printing.system, 'length'), -1);
}

/** `κ_1 = −α ΔT / h`, and E I κ as the moment that it counts as. */
function curvatureStatement(
  context: CaseContext,
  free: { readonly id: string; readonly number: number; readonly curvature: number },
  bending: Bending,
): Statement {
  const { definition, printing } = context;
  const symbol = name(curvatureSymbol(free.number));
  const [E, I] = rigiditySymbols(context, bending.from);
  const kappa = exactZeroOr(printing, curvatureUnit(context), free.curvature);
  const from = definition.temperatures.find(({ id }) => id === free.id);
  return {
    lines: [
      {
        left: symbol,
        chain: [
          ...(from === undefined
            ? []
            : [{ sign: '=' as const, of: worked(context, from) }]),
          { sign: '=', of: kappa },
        ],
        ...(from === undefined ? { recheck: 'none' as const } : {}),
      },
      {
        left: product(name(E), name(I), symbol),
        chain: [
          { sign: '=', of: product(bendingFigure(printing, 1, bending.EI), kappa) },
          { sign: '=', of: value(printing, 'moment', bending.EI * free.curvature) },
        ],
      },
    ],
  };
}

/** −α ΔT / h, the file's own figures brought to one system, a factor on the difference before them. */
function worked(context: CaseContext, from: BeamTemperature): Expression {
  const { printing } = context;
  const factors: readonly Expression[] = [
    ...(from.factor === undefined
      ? []
      : [tidyIn(printing, pureUnit, from.factor.factor)]),
    tidy(printing, 'expansion', from.expansion.si),
    tidy(printing, 'temperature', Math.abs(from.difference.si)),
  ];
  const warmth = (from.factor?.factor ?? 1) * from.difference.si;
  const over: Term = {
    sign: warmth < 0 ? 1 : -1,
    of: quotient(product(...factors), tidy(printing, 'length', from.depth.si)),
  };
  return over.sign === 1 ? over.of : { kind: 'sum', terms: [over] };
}
