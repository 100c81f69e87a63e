import { nearest } from '../../diagnostics/index.ts';
import type { CarriedReaction, MemberDefinition } from '../definitions.ts';
import type { OpenMember } from './open-member.ts';
import type { MemberFile } from './read-member.ts';
import { listed } from '../shape/listed.ts';

/** Every carried reaction must be one that its member's support gives. */
export function checkCarried(members: readonly OpenMember[]): void {
  const marks = members.map(({ file }) => file.mark);
  for (const { file, definition } of members)
    for (const reaction of definition?.carried ?? []) {
      if (!marks.includes(reaction.member)) {
        reportUnknownMember(file, reaction, marks);
        continue;
      }
      const source = members.find(
        (other) => other.file.mark === reaction.member,
      )?.definition;
      if (source !== undefined) checkSupport(file, reaction, source);
    }
}

function reportUnknownMember(
  file: MemberFile,
  reaction: CarriedReaction,
  marks: readonly string[],
): void {
  const near = nearest(reaction.member, marks);
  file.reading.report({
    code: 'unknown-member',
    message: `the project has no member ${reaction.member}`,
    span: reaction.span,
    hints: [
      near === undefined
        ? `members: ${listed(marks)}`
        : `write ${near}.${reaction.point}`,
    ],
  });
}

function checkSupport(
  file: MemberFile,
  reaction: CarriedReaction,
  source: MemberDefinition,
): void {
  const { member, point, span } = reaction;
  if (source.supports.some((support) => support.point === point)) {
    remarkOnReduction(file, reaction, source);
    return;
  }
  const exists = source.points.some((one) => one.name === point);
  const supported = source.supports.map((support) => support.point);
  const near = nearest(point, supported);
  file.reading.report({
    code: exists ? 'not-a-support' : 'unknown-point',
    message: exists
      ? `${member} has no support at ${point}, so it delivers nothing there`
      : `${member} has no point ${point}`,
    span,
    hints: [
      near === undefined
        ? `supports of ${member}: ${listed(supported)}`
        : `write ${member}.${near}`,
    ],
  });
}

// The reduction was granted for that member; whether it holds for this one is the engineer's to say.
function remarkOnReduction(
  file: MemberFile,
  reaction: CarriedReaction,
  source: MemberDefinition,
): void {
  const reduced = source.loads.find((load) => load.factor !== undefined);
  if (reduced?.factor === undefined) return;
  file.reading.report({
    code: 'carried-with-factor',
    severity: 'remark',
    message: `loads of ${source.mark} carry a factor (${reduced.factor.because}), and its reaction is carried on with it`,
    span: reaction.span,
    hints: ['see whether the factor holds for this member too'],
  });
}
