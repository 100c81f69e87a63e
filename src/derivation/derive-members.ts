import type { Diagnostic } from '../diagnostics/index.ts';
import type { Project } from '../project/index.ts';
import type { Determinacy } from '../statics/index.ts';
import type { BeamDerivation } from './derivation.ts';
import type { BeamWork } from './beam-work.ts';
import { deriveBeam } from './derive.ts';
import type { MemberWork } from './work-members.ts';

/** A member at the end of its working: narrated, or the diagnostic that keeps its results back. */
export type DerivedMember =
  | {
      readonly kind: 'derived';
      readonly work: BeamWork;
      readonly derivation: BeamDerivation;
    }
  | {
      readonly kind: 'failed';
      readonly mark: string;
      readonly memberKind: string;
      readonly title?: string;
      readonly determinacy?: Determinacy;
      readonly diagnostics: readonly Diagnostic[];
    };

/** Narrates every member that was worked; a check that does not hold keeps the member's results back. */
export function deriveMembers(
  project: Project,
  works: readonly MemberWork[],
): readonly DerivedMember[] {
  return works.map((one): DerivedMember => {
    if (one.kind === 'unworked') {
      const { definition, diagnostic, determinacy } = one;
      return {
        kind: 'failed',
        mark: definition.mark,
        memberKind: definition.kind,
        ...(definition.title === undefined ? {} : { title: definition.title }),
        ...(determinacy === undefined ? {} : { determinacy }),
        diagnostics: [diagnostic],
      };
    }
    const outcome = deriveBeam(project, one.work);
    if ('derivation' in outcome)
      return { kind: 'derived', work: one.work, derivation: outcome.derivation };
    const { definition, solution } = one.work;
    return {
      kind: 'failed',
      mark: definition.mark,
      memberKind: definition.kind,
      ...(definition.title === undefined ? {} : { title: definition.title }),
      determinacy: solution.determinacy,
      diagnostics: outcome.failed.findings.map((finding): Diagnostic => ({
        severity: 'error',
        code: 'check-failed',
        message: `case ${outcome.failed.case}: ${finding}`,
        span: definition.markSpan,
        hints: ['no result is given; report this with the definition file'],
        member: definition.mark,
      })),
    };
  });
}
