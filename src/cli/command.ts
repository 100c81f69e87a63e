import type { World } from '../world/index.ts';
import type { Option } from './option.ts';
import type { Given } from './read-arguments.ts';
import type { UsageFault } from './usage-fault.ts';
import type { Streams } from './streams.ts';

/** One run of a command: what was given, and what it may touch. */
export interface Call {
  readonly given: Given;
  readonly world: World;
  readonly streams: Streams;
  readonly program: { readonly name: string; readonly version: string };
  /** Where threads begin that verify beside this one; absent: all is done in this one. */
  readonly threadEntry?: URL;
}

/** A command of the program: what help says of it, and what it does. */
export interface Command {
  readonly name: string;
  /** Its arguments as help shows them: `FOLDER [MARK…]`. */
  readonly takes: string;
  /** What it does, a phrase. */
  readonly summary: string;
  /** Sentences for its own help page, a paragraph each. */
  readonly about: readonly string[];
  readonly options: Readonly<Record<string, Option>>;
  /** Lines to copy, each with what it does. */
  readonly examples: readonly { readonly line: string; readonly does: string }[];
  /** Does it and answers the exit code, or what is wrong with the command line. */
  readonly run: (call: Call) => Promise<number | UsageFault>;
}
