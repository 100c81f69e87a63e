import type { Command } from './command.ts';
import { archive } from './commands/archive.ts';
import { bind } from './commands/bind.ts';
import { check } from './commands/check.ts';
import { compare } from './commands/compare.ts';
import { explain } from './commands/explain.ts';
import { register } from './commands/register.ts';
import { schema } from './commands/schema.ts';
import { solve } from './commands/solve.ts';
import { start } from './commands/start.ts';
import { verify } from './commands/verify.ts';

/** Every command, in the order in which a newcomer meets them. A new one is a new file and one line here. */
export const commands: readonly Command[] = [
  start,
  solve,
  bind,
  check,
  archive,
  verify,
  register,
  compare,
  explain,
  schema,
];
