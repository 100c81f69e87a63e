import type { Span } from '../../diagnostics/index.ts';
import type { MemberDefinition } from '../definitions.ts';
import { loadPath } from '../load-path.ts';
import type { OpenMember } from './open-member.ts';

/** Members that lean on one another in a circle cannot be solved; each names the circle. */
export function checkCircles(members: readonly OpenMember[]): void {
  const sound = members.flatMap(({ definition }) => definition ?? []);
  for (const circle of loadPath(sound).circles)
    for (const { file, definition } of members) {
      if (definition === undefined || !circle.includes(file.mark)) continue;
      file.reading.report({
        code: 'depends-on-unsolved',
        message: `the carried reactions run in a circle: ${[...circle, circle[0]].join(' carries ')}`,
        span: spanOnCircle(definition, circle),
        hints: ['enter one of these reactions as loads'],
      });
    }
}

function spanOnCircle(definition: MemberDefinition, circle: readonly string[]): Span {
  return (
    definition.carried.find((reaction) => circle.includes(reaction.member))?.span ??
    definition.markSpan
  );
}
