import type { Diagnostic } from '../diagnostics/index.ts';
import type { BeamDefinition } from '../project/index.ts';
import type { Determinacy, Instability, Unsolved } from '../statics/index.ts';
import { degreesOf } from './direction.ts';
import { lengthText, type Printing } from './printing.ts';

/** Why a beam has no results, at the line that causes it, with what to try. */
export function unsolvedDiagnostic(
  definition: BeamDefinition,
  unsolved: Unsolved,
  printing: Printing,
): Diagnostic {
  const { determinacy } = unsolved;
  if (unsolved.reason === 'indeterminate') {
    return {
      severity: 'error',
      code: 'not-supported',
      message:
        'a support that moves along the member would share its force by axial stiffness, which a beam does not have',
      span: definition.supportsSpan,
      hints: ['let one support alone hold the member along its axis'],
      member: definition.mark,
    };
  }
  if (unsolved.reason === 'needs-stiffness') {
    return {
      severity: 'error',
      code: 'needs-stiffness',
      message: `springs, settlements and temperature share their forces by stiffness, and E or I is not given (indeterminate to degree ${determinacy.redundants})`,
      span: definition.supportsSpan,
      hints: ['give `section` with I and `material` with E'],
      member: definition.mark,
    };
  }
  if (unsolved.reason === 'ways-disagree') {
    return {
      severity: 'error',
      code: 'check-failed',
      message: `case ${unsolved.case}: two ways of solving are ${unsolved.agreement.difference.toExponential(1)} of scale apart, more than the ${unsolved.agreement.allowed.toExponential(1)} that rounding explains`,
      span: definition.markSpan,
      hints: ['no result is given; report this with the definition file'],
      member: definition.mark,
    };
  }
  const { message, hint } = instabilityWords(determinacy, printing);
  const hinge = hingeAtFault(definition, determinacy.instability);
  return {
    severity: 'error',
    code: 'unstable',
    message: `unstable: ${message}`,
    span: hinge?.span ?? definition.supportsSpan,
    hints: [hint],
    member: definition.mark,
  };
}

function hingeAtFault(
  definition: BeamDefinition,
  instability: Instability | undefined,
): BeamDefinition['hinges'][number] | undefined {
  if (instability?.kind !== 'mechanism') return undefined;
  return definition.hinges.find(({ point }) => instability.hinges.includes(point));
}

function instabilityWords(
  { instability, unknowns, equations }: Determinacy,
  printing: Printing,
): { readonly message: string; readonly hint: string } {
  switch (instability?.kind) {
    case 'no-x-restraint':
      return {
        message: 'no restraint along x, so the member can slide along its axis',
        hint: 'make one support a pin',
      };
    case 'parallel':
      return {
        message: `parallel reactions, all along ${Number(degreesOf(instability.direction).toFixed(1))} deg, leave the member free to slide across them`,
        hint: 'turn one support, or make it a pin',
      };
    case 'concurrent':
      return {
        message: `concurrent reactions: all of them pass through x = ${lengthText(printing, instability.x)}, y = ${lengthText(printing, instability.y)}, and the member can turn about that place`,
        hint: 'turn or move one support so that its reaction passes beside that place',
      };
    case 'mechanism':
      return {
        message: `a mechanism at hinge${instability.hinges.length > 1 ? 's' : ''} ${instability.hinges.join(', ')}: the pieces can turn against one another`,
        hint: 'take a hinge out, or support the piece beside it',
      };
    case 'too-few-reactions':
    case undefined:
      return {
        message: `too few reactions: ${unknowns} unknown${unknowns === 1 ? '' : 's'} against ${equations} equations`,
        hint: 'add a support, or let one hold more',
      };
  }
}
