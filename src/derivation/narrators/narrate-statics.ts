import type { Symbol } from '../../equation/index.ts';
import type { BeamDefinition } from '../../project/index.ts';
import { unknownsOf, type BeamStructure, type Determinacy, type Restraint } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { numberText } from '../printing.ts';
import type { StaticsStep } from '../steps.ts';
import { reactionSymbol, senseOf } from '../symbols.ts';

/** Item 2: which reactions each support can give, drawn in their positive sense. */
export function narrateSupports({ structure, definition }: MemberContext): readonly StaticsStep[] {
  return [
    {
      kind: 'release',
      rows: structure.supports.map(({ point, type, restraints }) => ({
        point,
        type,
        isInclined: isInclined(definition, point),
        gives: restraints.map((restraint) => ({
          symbol: reactionSymbol(point, restraint),
          sense: senseOf(restraint),
        })),
      })),
    },
  ];
}

function isInclined(definition: BeamDefinition, point: string): boolean {
  return definition.supports.some((support) => support.point === point && support.normal !== undefined);
}

/** Item 3: unknowns counted against equations, the geometry tested by rank, and the method that follows. */
export function narrateDeterminacy(
  { structure, symbols }: MemberContext,
  found: Determinacy,
): readonly StaticsStep[] {
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
      alongX: of((restraint) => restraint.kind === 'force' && restraint.direction[0] !== 0),
      acrossAndTurning: of((restraint) => !isAlongX(restraint)),
      hinges,
    },
    { kind: 'method', axialOnly: found.axialOnly, hinges },
  ];
}

function isAlongX(restraint: Restraint): boolean {
  return restraint.kind === 'force' && restraint.direction[1] === 0;
}

/** How many springs or settlements a determinate beam has: they move it and change no force. */
export function movesWithoutForce(structure: BeamStructure): boolean {
  return structure.supports.some(({ restraints }) =>
    restraints.some((r) => r.stiffness !== undefined || (r.settlements ?? []).length > 0),
  );
}
