#!/usr/bin/env node
import { diskWorld } from '../world/index.ts';
import { run } from './index.ts';
import type { Streams } from './streams.ts';

// A reader that has seen enough closes the pipe, as `| head` does; that is no fault.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (failure: NodeJS.ErrnoException) => {
    if (failure.code !== 'EPIPE') throw failure;
    process.exit();
  });

const streams: Streams = {
  out: (text) => {
    process.stdout.write(text);
  },
  err: (text) => {
    process.stderr.write(text);
  },
  coloured: { out: takesColours(process.stdout), err: takesColours(process.stderr) },
  isTerminal: process.stderr.isTTY,
  now: () => performance.now(),
  onInterrupt: (then) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, then);
    return () => {
      for (const signal of ['SIGINT', 'SIGTERM'] as const) process.off(signal, then);
    };
  },
};

// Beside this file once it is built.
const threadEntry = new URL('verify-thread.js', import.meta.url);

process.exitCode = await run(process.argv.slice(2), diskWorld(), streams, threadEntry);

/** Colours are for terminals, unless the environment asks for them or forbids them (force-color.org, no-color.org). */
function takesColours(stream: NodeJS.WriteStream): boolean {
  const { FORCE_COLOR: forced, NO_COLOR: forbidden } = process.env;
  if (forced !== undefined) return forced !== '0' && forced !== 'false';
  if (forbidden !== undefined && forbidden !== '') return false;
  return stream.isTTY && stream.hasColors();
}
