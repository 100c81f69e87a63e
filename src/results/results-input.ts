import type { BeamResult, Determinacy, RangeResult } from '../statics/index.ts';
import type { MemberError } from './results.ts';

/** What a package's results are collected from: identity and solutions, in SI. */
export interface ResultsInput {
  readonly project: {
    readonly number?: string;
    readonly title: string;
    readonly revision?: string;
    readonly units: 'us' | 'si';
  };
  /** In sheet order. */
  readonly members: readonly MemberInput[];
  /** How many equal stretches stations divide a member into; absent for no stations. */
  readonly stations?: number;
}

/** A member with its outcome. */
export type MemberInput = SolvedBeamInput | UnsolvedMemberInput;

interface IdentityInput {
  readonly mark: string;
  readonly title?: string;
  /** First sheet of the member in the package, where there is one. */
  readonly sheet?: number;
}

/** A beam that was solved and whose checks all held. */
export interface SolvedBeamInput extends IdentityInput {
  readonly outcome: 'solved';
  readonly kind: 'beam';
  readonly determinacy: Determinacy;
  /** Cases first, then combinations, as the sheet lists them. */
  readonly entries: readonly EntryInput[];
  /** What the choices in arrangements stand for, by id; none where every entry has a single state. */
  readonly choices?: ReadonlyMap<string, ChoiceInput>;
  /** Limits that were judged; none where absent. */
  readonly checks?: readonly CheckInput[];
}

/** A limit that was judged on one span of a member. */
export interface CheckInput {
  readonly name: 'deflection';
  readonly clause: string;
  /** The case, combination or sum that it was judged on. */
  readonly combination: string;
  /** Size of what is there and what is allowed, m. */
  readonly demand: number;
  readonly capacity: number;
  readonly ratio: number;
  readonly passes: boolean;
  readonly span: string;
  /** Station of the demand, m. */
  readonly at: number;
}

/** A result and what it stands for: a case, a combination, or both where they share a mark. */
export interface EntryInput {
  readonly result: BeamResult;
  /** Where it has no single state: its bounds, which are what is written. */
  readonly range?: RangeResult;
  readonly uses: readonly EntryUse[];
}

/** What a choice stands for: the loads of one case on a span, or a carried reaction. */
export type ChoiceInput =
  | {
      readonly kind: 'span';
      readonly case: string;
      readonly from: string;
      readonly to: string;
    }
  | {
      readonly kind: 'carried';
      readonly case: string;
      readonly member: string;
      readonly point: string;
      readonly component: 'x' | 'y' | 'moment';
    };

/** A load case, or a combination for strength or for service. */
export type EntryUse = 'case' | 'strength' | 'service';

/** A member without results, and why. */
export interface UnsolvedMemberInput extends IdentityInput {
  readonly outcome: 'unsolved';
  readonly kind: string;
  readonly determinacy?: Determinacy;
  readonly error: MemberError;
}
