import {
  cancelUnits,
  name,
  number,
  product,
  quotient,
  sum,
  withConversion,
  type Expression,
  type Figure,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import { isFlexible, type BeamStructure } from '../../statics/index.ts';
import { displayUnit, powerOfUnit, pureUnit } from '../../units/index.ts';
import type { CaseContext, MemberContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { asGiven, value } from '../printing.ts';
import type { RigidityStep } from '../steps/redundant-steps.ts';

const modulus: Symbol = { letter: 'E', meaning: 'modulus of elasticity' };

function inertia(subscript?: string): Symbol {
  return {
    letter: 'I',
    ...(subscript === undefined ? {} : { subscript }),
    meaning:
      subscript === '0'
        ? 'second moment of area of the stretch that others are compared with'
        : 'second moment of area about the bending axis',
  };
}

/** True where the stiffness changes along the beam. */
export function isStepped({ stiffness = [] }: BeamStructure): boolean {
  return new Set(stiffness.map(({ EI }) => EI)).size > 1;
}

/** `E I`, or `E I₀` where the stiffness changes: what movements are multiplied by. */
export function referenceRigidity({
  structure,
}: Pick<MemberContext, 'structure'>): Expression {
  return product(name(modulus), name(inertia(isStepped(structure) ? '0' : undefined)));
}

/** The reference stiffness as a figure. */
export function rigidityFigure({ printing }: MemberContext, si: number): Figure {
  return value(printing, 'rigidity', si);
}

/** What is known of the stiffness, and of curvatures that the member would take by itself in this case. */
export function narrateRigidity(context: CaseContext): RigidityStep {
  const { structure } = context;
  const stretches = structure.stiffness ?? [];
  const [first] = stretches;
  const isUsed = usesRigidity(context);
  return {
    kind: 'rigidity',
    isAssumed: first === undefined,
    isStepped: isStepped(structure),
    reference: referenceRigidity(context),
    isUsed,
    stretches: (isUsed ? stretches : [])
      .filter(({ EI }, index) => EI !== stretches[index - 1]?.EI)
      .map(({ from, EI }, index, kept) => ({
        from: placeAtStation(context, from),
        to: placeAtStation(
          context,
          kept[index + 1]?.from ?? stretches.at(-1)?.to ?? from,
        ),
        statement: rigidityOf(context, { from, EI, reference: first?.EI ?? EI }),
      })),
    curvatures: curvaturesOf(context),
  };
}

/** True where the size of the stiffness counts, or its change along the beam: it drops out of all else. */
function usesRigidity({ structure, mark }: CaseContext): boolean {
  const restraints = structure.supports.flatMap((support) => support.restraints);
  return (
    structure.stiffness !== undefined &&
    (isStepped(structure) ||
      restraints.some(isFlexible) ||
      restraints.some(({ settlements = [] }) =>
        settlements.some((one) => one.case === mark && one.value !== 0),
      ) ||
      (structure.curvatures ?? []).some(
        (one) => one.case === mark && one.curvature !== 0,
      ))
  );
}

function rigidityOf(
  context: CaseContext,
  of: { readonly from: number; readonly EI: number; readonly reference: number },
): Statement {
  const { printing, definition, structure } = context;
  const found = value(printing, 'rigidity', of.EI);
  const E = definition.material?.E;
  const section = definition.sections.find(({ to }) => of.from < to.x)?.section;
  const stepped = isStepped(structure);
  const isFirst = of.EI === of.reference;
  const left = product(
    name(modulus),
    name(inertia(stepped && isFirst ? '0' : undefined)),
  );
  const worked =
    E === undefined || section?.I === undefined
      ? []
      : [
          {
            sign: '=' as const,
            of: cancelUnits(
              withConversion(product(asGiven(E), asGiven(section.I)), found.unit),
            ),
          },
        ];
  const lines: Statement['lines'] = [
    { left, chain: [...worked, { sign: '=', of: found }] },
  ];
  if (!stepped || isFirst) return { lines };
  const ratio = {
    left: quotient(name(inertia('0')), name(inertia())),
    chain: [
      {
        sign: '=' as const,
        of: quotient(value(printing, 'rigidity', of.reference), found),
      },
      {
        sign: '=' as const,
        of: figureIn(printing.figures, pureUnit, of.reference / of.EI),
      },
    ],
  };
  return { lines: [...lines, ratio] };
}

/** −α ΔT / h of every temperature difference of the case. */
function curvaturesOf(context: CaseContext): RigidityStep['curvatures'] {
  const { structure, printing, definition, mark } = context;
  const curvatures = (structure.curvatures ?? []).filter(
    (one) => one.case === mark && one.curvature !== 0,
  );
  return curvatures.map(({ id, from, to, curvature }) => {
    const given = definition.temperatures.find((one) => one.id === id);
    const found = curvatureFigure(context, curvature);
    const worked =
      given === undefined
        ? []
        : [
            {
              sign: '=' as const,
              of: sum({
                sign: -1,
                of: quotient(
                  product(
                    asGiven(given.expansion),
                    ...(given.factor === undefined
                      ? []
                      : [number(given.factor.factor)]),
                    asGiven(given.difference),
                  ),
                  asGiven(given.depth),
                ),
              }),
            },
          ];
    return {
      from: placeAtStation({ structure, printing }, from),
      to: placeAtStation({ structure, printing }, to),
      statement: {
        lines: [
          {
            left: name(freeCurvatureSymbol),
            chain: [...worked, { sign: '=', of: found }],
          },
        ],
      },
    };
  });
}

/** The curvature that a warm stretch would take by itself. */
export const freeCurvatureSymbol: Symbol = {
  letter: 'κ',
  subscript: '0',
  meaning: 'curvature that the member would take by itself',
};

/** A curvature as a figure, 1/ft or 1/m. */
export function curvatureFigure({ printing }: MemberContext, si: number): Figure {
  const unit = powerOfUnit(displayUnit(printing.system, 'length'), -1);
  return figureIn(printing.figures, unit, si);
}
