import { parseArgs } from 'node:util';
import type { Option } from './option.ts';
import { unknownWord, type UsageFault } from './usage-fault.ts';

/** What a command line gave. */
export interface Given {
  readonly positionals: readonly string[];
  /** Whether an option was given. */
  readonly has: (option: string) => boolean;
  /** Every value of an option, in order. */
  readonly all: (option: string) => readonly string[];
  /** The value of an option that is given once; the last counts. */
  readonly value: (option: string) => string | undefined;
}

/** Options that every command takes. */
export const commonOptions: Readonly<Record<string, Option>> = {
  help: { type: 'boolean', short: 'h', about: 'show what the command does' },
};

/** Reads the arguments of a command, or tells the first that it cannot take. */
export function readArguments(
  args: readonly string[],
  own: Readonly<Record<string, Option>>,
): { readonly given: Given } | { readonly fault: UsageFault } {
  const options = { ...own, ...commonOptions };
  const { tokens } = parseArgs({
    args: [...args],
    options: Object.fromEntries(
      Object.entries(options).map(([name, { type, short }]) => [
        name,
        { type, multiple: true, ...(short === undefined ? {} : { short }) },
      ]),
    ),
    // Node's own complaints are worded for programmers, so that every token is looked at here.
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const positionals: string[] = [];
  const values = new Map<string, readonly string[]>();
  for (const token of tokens) {
    if (token.kind === 'positional') positionals.push(token.value);
    if (token.kind !== 'option') continue;
    const { name, rawName, value, inlineValue } = token;
    const fault = faultOf(
      { name, rawName, value, isInline: inlineValue === true },
      options,
    );
    if (fault !== undefined) return { fault };
    values.set(name, [
      ...(values.get(name) ?? []),
      ...(value === undefined ? [] : [value]),
    ]);
  }
  return {
    given: {
      positionals,
      has: (option) => values.has(option),
      all: (option) => values.get(option) ?? [],
      value: (option) => values.get(option)?.at(-1),
    },
  };
}

interface OptionToken {
  readonly name: string;
  readonly rawName: string;
  readonly value: string | undefined;
  readonly isInline: boolean;
}

function faultOf(
  { name, rawName, value, isInline }: OptionToken,
  options: Readonly<Record<string, Option>>,
): UsageFault | undefined {
  const option = Object.hasOwn(options, name) ? options[name] : undefined;
  if (option === undefined) return unknownWord('option', rawName, spellings(options));
  if (option.type === 'boolean') {
    return value === undefined
      ? undefined
      : { message: `${rawName} takes no value`, hints: [`write ${rawName} alone`] };
  }
  const isMissing =
    value === undefined || (!isInline && value.startsWith('-') && value !== '-');
  return isMissing || value === ''
    ? {
        message: `${rawName} needs a value`,
        hints: [`write ${rawName} ${option.value ?? 'VALUE'}`],
      }
    : undefined;
}

function spellings(options: Readonly<Record<string, Option>>): readonly string[] {
  return Object.entries(options).flatMap(([name, { short }]) => [
    `--${name}`,
    ...(short === undefined ? [] : [`-${short}`]),
  ]);
}
