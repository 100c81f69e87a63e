import { checkCarried } from './check-carried.ts';
import { checkCircles } from './check-circles.ts';
import { checkMarks } from './check-marks.ts';
import type { OpenMember } from './open-member.ts';

/** Checks members against one another: marks, carried reactions, circles of them. */
export function checkMembers(members: readonly OpenMember[]): void {
  checkMarks(members.map(({ file }) => file));
  checkCarried(members);
  checkCircles(members);
}
