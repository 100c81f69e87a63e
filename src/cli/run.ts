import type { World } from '../world/index.ts';
import type { Command } from './command.ts';
import { commands } from './commands.ts';
import { good, ownFault, usersMistake } from './exit-codes.ts';
import { helpOn, helpOnAll } from './help.ts';
import { paintFor, printable } from './paint.ts';
import { readArguments } from './read-arguments.ts';
import { readProgram } from './read-program.ts';
import { showUsageFault } from './show-diagnostic.ts';
import type { Streams } from './streams.ts';
import { unknownWord, type UsageFault } from './usage-fault.ts';

/**
 * Runs one command line (without the names of Node and the program) and answers the exit code: 0
 * good, 1 a mistake of the user's, 2 a fault of the program, which is told with its stack. Never
 * throws. `threadEntry` is where threads begin that work beside this one; without it there are none.
 */
export async function run(
  args: readonly string[],
  world: World,
  streams: Streams,
  threadEntry?: URL,
): Promise<number> {
  try {
    return await runCommand(args, world, streams, threadEntry);
  } catch (failure) {
    const paint = paintFor(streams.coloured.err);
    const stack = failure instanceof Error ? failure.stack : String(failure);
    streams.err(
      `${paint('error', 'This is a fault of the program, not of your files.')} ` +
        'Nothing that it says can be relied on. Please report it with the lines below ' +
        'and the folder that it was run on.\n\n' +
        `${readProgram().version}, Node ${process.version}, ${printable(args.join(' '))}\n${stack ?? ''}\n`,
    );
    return ownFault;
  }
}

async function runCommand(
  args: readonly string[],
  world: World,
  streams: Streams,
  threadEntry: URL | undefined,
): Promise<number> {
  const [first, ...rest] = args;
  const paint = paintFor(streams.coloured.out);
  const showAll = (): number => {
    streams.out(helpOnAll(commands, readProgram(), paint));
    return good;
  };
  if (first === undefined || first === '--help' || first === '-h') return showAll();
  if (first === '--version') {
    streams.out(`${readProgram().version}\n`);
    return good;
  }
  // `help bind` is what many try first.
  if (first === 'help')
    return rest[0] === undefined
      ? showAll()
      : runCommand([rest[0], '--help'], world, streams, threadEntry);
  const command = commands.find(({ name }) => name === first);
  if (command === undefined) return refuse(noCommand(first), streams);
  const read = readArguments(rest, command.options);
  if ('fault' in read) return refuse(read.fault, streams, command);
  if (read.given.has('help')) {
    streams.out(helpOn(command, paint));
    return good;
  }
  const { given } = read;
  const outcome = await command.run({
    given,
    world,
    streams,
    program: readProgram(),
    ...(threadEntry === undefined ? {} : { threadEntry }),
  });
  return typeof outcome === 'number' ? outcome : refuse(outcome, streams, command);
}

function noCommand(word: string): UsageFault {
  const names = commands.map(({ name }) => name);
  return word.startsWith('-')
    ? unknownWord('option', word, ['--help', '--version', '-h'])
    : unknownWord('command', word, names);
}

function refuse(fault: UsageFault, streams: Streams, command?: Command): number {
  const more = command === undefined ? '' : `${command.name} `;
  streams.err(showUsageFault(fault, paintFor(streams.coloured.err)));
  streams.err(`sumzero ${more}--help shows what can be written.\n`);
  return usersMistake;
}
