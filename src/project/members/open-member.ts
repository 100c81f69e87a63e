import type { MemberDefinition } from '../definitions.ts';
import type { MemberFile } from './read-member.ts';

/** A member's file and, where it is sound, what it defines. */
export interface OpenMember {
  readonly file: MemberFile;
  readonly definition: MemberDefinition | undefined;
}
