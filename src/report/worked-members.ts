import type { DerivedMember, ProjectClosure } from '../derivation/index.ts';
import type { Project } from '../project/index.ts';
import type { CombinationList } from '../standards/index.ts';

/** A project worked to its derivations, as the package takes it. */
export interface WorkedMembers {
  /** Absent where the project itself cannot be read. */
  readonly project?: Project;
  readonly combinations: CombinationList;
  readonly members: readonly DerivedMember[];
  readonly closures: readonly ProjectClosure[];
}
