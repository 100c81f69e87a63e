import { run, type Streams } from '../../src/cli/index.ts';
import { memoryWorld, type MemoryWorld, type World } from '../../src/world/index.ts';

/** What one command line gave. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Streams that keep what is written, for a program run in process. */
export function keepingStreams(about: Partial<Streams> = {}): {
  readonly streams: Streams;
  readonly out: () => string;
  readonly err: () => string;
} {
  const [out, err]: [string[], string[]] = [[], []];
  const streams: Streams = {
    out: (text) => out.push(text),
    err: (text) => err.push(text),
    coloured: { out: false, err: false },
    isTerminal: false,
    now: () => 0,
    onInterrupt: () => () => undefined,
    ...about,
  };
  return { streams, out: () => out.join(''), err: () => err.join('') };
}

/** Runs a command line in a world of memory. */
export async function ran(
  args: readonly string[],
  world: World = memoryWorld({}),
  about: Partial<Streams> = {},
): Promise<Ran> {
  const { streams, out, err } = keepingStreams(about);
  const code = await run(args, world, streams);
  return { code, out: out(), err: err() };
}

/** A small project that binds, in the folder `shed`; files may be changed, added or taken away. */
export function shed(
  changes: Readonly<Record<string, string | undefined>> = {},
): MemoryWorld {
  const files = { ...shedFiles, ...changes };
  return memoryWorld(
    Object.fromEntries(
      Object.entries(files).flatMap(([path, text]) =>
        text === undefined ? [] : [[`shed/${path}`, text] as const],
      ),
    ),
  );
}

const shedFiles: Readonly<Record<string, string>> = {
  'project.yaml': 'project: { title: Potting shed }\nunits: us\n',
  'members/b1.yaml': [
    'mark: B1',
    'title: Ridge beam',
    'kind: beam',
    'points: { A: 0 ft, B: 12 ft }',
    'supports: { A: pin, B: roller }',
    'loads: [ { case: S, point: 2 kip, at: 6 ft } ]',
    '',
  ].join('\n'),
  'members/b2.yaml': [
    'mark: B2',
    'kind: beam',
    'points: { A: 0 ft, B: 8 ft }',
    'supports: { A: pin, B: roller }',
    'loads: [ { reaction: B1.B, at: 4 ft } ]',
    '',
  ].join('\n'),
};
