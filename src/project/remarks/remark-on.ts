import type { OpenFolder } from '../open-folder.ts';
import type { ReadFolder } from './read-folder.ts';
import { remarkOnPictures } from './remark-on-pictures.ts';
import { remarkOnPoints } from './remark-on-points.ts';
import { remarkOnSuccessor } from './remark-on-successor.ts';
import { remarkOnUnusedCases } from './remark-on-unused-cases.ts';
import { remarkOnUnusedIds } from './remark-on-unused-ids.ts';

/** Remarks on what is legal and seldom meant, folder-wide. */
export function remarkOn(read: ReadFolder, open: OpenFolder): void {
  const { project, loads } = open;
  for (const member of read.members) remarkOnPoints(member);
  if (project !== undefined) {
    remarkOnPictures(read, project.reading);
    remarkOnSuccessor(project);
  }
  // Where a member is at fault nobody knows what it would have used.
  if (read.members.some(({ definition }) => definition === undefined)) return;
  if (project !== undefined) remarkOnUnusedIds(read, project);
  if (loads !== undefined) remarkOnUnusedCases(read, loads);
}
