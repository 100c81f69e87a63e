import { indexLines, nearest, placeIn, type Span } from '../diagnostics/index.ts';
import type { CarriedReaction, MemberDefinition } from './definitions.ts';
import { loadPath } from './load-path.ts';
import type { MemberFile } from './read-member.ts';

/** A member's file and, where it is sound, what it defines. */
export interface OpenMember {
  readonly file: MemberFile;
  readonly definition: MemberDefinition | undefined;
}

/** Two members of one mark cannot be told apart: each is at fault, and names the place of the other. */
export function checkMarks(files: readonly MemberFile[]): void {
  for (const file of files) {
    const twin = files.find((other) => other !== file && other.mark === file.mark);
    const span = file.beam?.mark?.span;
    if (twin === undefined || span === undefined) continue;
    const { line } = placeIn(
      indexLines(twin.reading.text),
      twin.beam?.mark?.span.start ?? 0,
    );
    file.reading.report({
      code: 'mark-taken',
      message: `the mark ${file.mark} is also that of the member in ${twin.reading.file}, line ${line}`,
      span,
      hints: ['give one of the two another mark'],
    });
  }
}

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
        ? `members: ${marks.join(', ')}`
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
        ? `supports of ${member}: ${supported.join(', ')}`
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
