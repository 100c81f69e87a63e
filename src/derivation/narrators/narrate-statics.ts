import type { Symbol } from '../../equation/index.ts';
import { unknownsOf, type Determinacy, type Restraint } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { acuteAngle, asDirection } from '../direction.ts';
import { numberText, type Printing } from '../printing.ts';
import type { StaticsStep } from '../steps.ts';
import { reactionSymbol, senseOf } from '../symbols.ts';

/** Item 2: which reactions each support can give, drawn in their positive sense. */
export function narrateSupports({
  structure,
  printing,
}: MemberContext): readonly StaticsStep[] {
  return [
    {
      kind: 'release',
      rows: structure.supports.map(({ point, type, restraints }) => {
        const inclined = inclinedFact(printing, restraints);
        return {
          point,
          type,
          ...(inclined === undefined ? {} : { inclined }),
          gives: restraints.map((restraint) => ({
            symbol: reactionSymbol(point, restraint),
            sense: senseOf(restraint),
          })),
        };
      }),
    },
  ];
}

type ReleaseRow = Extract<StaticsStep, { kind: 'release' }>['rows'][number];

/** How a slanted reaction stands to the axis, from which the sines and cosines of the sums come. */
function inclinedFact(
  printing: Printing,
  restraints: readonly Restraint[],
): ReleaseRow['inclined'] {
  const slanted = restraints.find(
    (r) => r.kind === 'force' && r.direction[0] !== 0 && r.direction[1] !== 0,
  );
  if (slanted?.kind !== 'force') return undefined;
  const [dx, dy] = slanted.direction;
  return {
    toward: asDirection(printing, slanted.direction),
    angle: acuteAngle(printing, slanted.direction),
    x: dx > 0 ? 'right' : 'left',
    y: dy > 0 ? 'up' : 'down',
  };
}

/** Item 3: unknowns counted against equations, the geometry tested by rank, and the method that follows. */
export function narrateDeterminacy(
  context: MemberContext,
  found: Determinacy,
): readonly StaticsStep[] {
  const { structure, symbols } = context;
  const unknowns = unknownsOf(structure).map((unknown) => symbols.unknown(unknown));
  const hinges = structure.hinges.map(({ point }) => point);
  const of = (test: (restraint: Restraint) => boolean): readonly Symbol[] =>
    structure.supports.flatMap(({ point, restraints }) =>
      restraints.filter(test).map((restraint) => reactionSymbol(point, restraint)),
    );
  return [
    {
      kind: 'count',
      unknowns,
      unknownCount: found.unknowns,
      hinges,
      equationCount: found.equations,
      degree: found.degree,
    },
    {
      kind: 'geometry-test',
      rank: found.rank,
      equationCount: found.equations,
      redundants: found.redundants,
      mechanisms: found.mechanisms,
      condition: numberText(found.condition, 2),
      isNearlyUnstable: found.nearlyUnstable,
      alongX: of(
        (restraint) => restraint.kind === 'force' && restraint.direction[0] !== 0,
      ),
      acrossAndTurning: of((restraint) => !isAlongX(restraint)),
      holdsTurning: of((restraint) => restraint.kind === 'moment').length > 0,
      hinges,
    },
    {
      kind: 'method',
      axialOnly: found.axialOnly,
      hinges,
      ...redundantsFact(context, found),
    },
  ];
}

function redundantsFact(
  { method, assumesConstantStiffness }: MemberContext,
  { redundants }: Determinacy,
): Pick<Extract<StaticsStep, { kind: 'method' }>, 'redundants'> {
  if (method === undefined) return {};
  return {
    redundants: {
      count: method.redundants,
      along: redundants - method.redundants,
      method: method.method,
      why: method.why,
      assumesConstantStiffness,
    },
  };
}

function isAlongX(restraint: Restraint): boolean {
  return restraint.kind === 'force' && restraint.direction[1] === 0;
}
