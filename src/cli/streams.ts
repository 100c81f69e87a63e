/** Where words go, and what may be known of who reads them. */
export interface Streams {
  /** Results: what was asked for. */
  readonly out: (text: string) => void;
  /** All else: diagnostics, progress, faults. */
  readonly err: (text: string) => void;
  /** Whether each of the two takes colours. */
  readonly coloured: { readonly out: boolean; readonly err: boolean };
  /** Whether `err` is read on a terminal, where a line may be written over. */
  readonly isTerminal: boolean;
  /** Milliseconds since the program was started. */
  readonly now: () => number;
  /** Calls back when the user asks to stop (Ctrl-C), until the function that it answers is called. */
  readonly onInterrupt: (then: () => void) => () => void;
}
