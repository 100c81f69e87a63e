/**
 * The command line.
 *
 * ```
 * arguments ──readArguments──▶ a command and what was given ──its run──▶ text on two streams, exit code
 * ```
 *
 * Each command is a value in one list (`commands.ts`): what help says of it and what it does.
 * Everything it may touch comes in with the call, the world and the streams, so that a test runs the
 * whole program in process. Commands enter the pipeline by `await import` of the public face, so
 * that help, versions and explanations stay light. Results go to the output, all else to the error
 * stream: diagnostics, progress, faults.
 *
 * @module
 */
export { run } from './run.ts';
export type { Streams } from './streams.ts';
