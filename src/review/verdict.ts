/** How a step was marked. */
export type Verdict = 'right' | 'wrong' | 'follows' | 'unread';

/** What a finding says. */
export type FindingKind =
  | 'sign'
  | 'lever-arm'
  | 'missing-term'
  | 'extra-term'
  | 'magnitude'
  | 'resultant'
  | 'unit'
  | 'arithmetic'
  | 'rounding'
  | 'carried'
  | 'solvability'
  | 'symbol'
  | 'syntax'
  | 'step';

/** One thing found in a step. */
export interface Finding {
  readonly kind: FindingKind;
  /** The written term that it is about, as written. */
  readonly term?: string;
  /** One or two sentences for whoever wrote the step. */
  readonly message: string;
}
