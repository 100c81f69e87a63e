import { basename, resolve } from 'node:path';
import { bindOnce, type BindRequest } from './bind-once.ts';
import type { Call } from './command.ts';
import { eventQueue } from './event-queue.ts';
import { good } from './exit-codes.ts';
import { paintFor } from './paint.ts';
import type { UsageFault } from './usage-fault.ts';
import { watchFolder } from './watch-folder.ts';

/**
 * Binds now and again after every save, until the user asks to stop. Errors are told and the next
 * save is waited for; a save while a package is being bound is bound after it.
 */
export async function bindAgain(
  call: Call,
  request: BindRequest,
): Promise<number | UsageFault> {
  const { streams, world } = call;
  const events = eventQueue<'saved' | 'ended'>();
  // What is no folder cannot be watched, and binding it once tells why.
  if (world.list(request.folder) === undefined) return bindOnce(call, request);
  const watching = watchFolder({
    world,
    folder: request.folder,
    counts: (file) => isDefinition(file) && !isOutput(file, request),
    onSave: () => events.push('saved'),
  });
  if ('refused' in watching) {
    const message = `${request.folder} cannot be watched: ${watching.refused}`;
    return { message, hints: ['bind without --watch'] };
  }
  const unlisten = streams.onInterrupt(() => events.push('ended'));
  const paint = paintFor(streams.coloured.err);
  const bind = async (isFirst: boolean): Promise<void> => {
    await bindOnce(call, { ...request, isFirst });
    if (!request.isQuiet)
      streams.err(`${paint('quiet', `Watching ${request.folder}; Ctrl-C ends.`)}\n`);
  };
  try {
    await bind(true);
    while ((await events.next()) === 'saved') await bind(false);
    return good;
  } finally {
    watching.stop();
    unlisten();
  }
}

/** Files that editors and systems keep for themselves are hidden, end in a tilde or are named for being temporary. */
function isDefinition(file: string): boolean {
  const name = basename(file);
  return (
    !name.startsWith('.') && !name.endsWith('~') && !/\.(swp|tmp|part)$/u.test(name)
  );
}

function isOutput(file: string, { folder, paths }: BindRequest): boolean {
  const outputs = [paths.pdf, paths.json].map((path) => resolve(path));
  return outputs.includes(resolve(folder, file));
}
