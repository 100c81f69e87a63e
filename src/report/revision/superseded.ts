import type { WorkedMembers } from '../worked-members.ts';

/** The package that the present one replaces: its bag, and its project worked again by the present version. */
export interface Superseded {
  /** Path of the bag as project.yaml names it. */
  readonly bag: string;
  /** SHA-256 of the bag. */
  readonly sha256: string;
  readonly worked: WorkedMembers;
}
