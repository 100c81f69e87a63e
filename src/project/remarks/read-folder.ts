import type { LoadsDefinition, ProjectDefinition } from '../definitions.ts';
import type { Folder } from '../folder/gather.ts';
import type { OpenMember } from '../members/open-member.ts';

/** What was read of a folder, as far as remarks look at it. */
export interface ReadFolder {
  readonly definition: ProjectDefinition;
  readonly loads: LoadsDefinition;
  readonly members: readonly OpenMember[];
  readonly folder: Folder;
}
