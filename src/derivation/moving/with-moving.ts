import type { CaseContext } from '../case-context.ts';
import type { Section } from '../derivation.ts';
import { narrateMoving } from './narrate-moving.ts';

/** The sections of a case with trains: theirs comes first, and the others then work the train where it bends the member most. */
export function withMoving(
  context: CaseContext,
  sections: readonly Section[],
): readonly Section[] {
  const rolled = context.rolled.find(({ mark }) => mark === context.mark);
  const [first] = sections;
  if (rolled === undefined || first === undefined) return sections;
  return [
    {
      kind: 'moving-loads',
      ...(first.case === undefined ? {} : { case: first.case }),
      steps: narrateMoving(context, rolled),
    },
    ...sections,
  ];
}
