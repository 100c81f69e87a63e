/** What a code stands for, as `explain CODE` prints it. */
export interface CodeEntry {
  /** What is wrong, in one sentence. */
  readonly meaning: string;
  /** How to mend it, in one or two sentences. */
  readonly mend: string;
  /** A small faulty snippet and its mended twin; absent where no file shows the mistake. */
  readonly example?: { readonly wrong: string; readonly right: string };
}
