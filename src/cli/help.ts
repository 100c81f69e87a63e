import type { Command } from './command.ts';
import type { Option } from './option.ts';
import type { Paint } from './paint.ts';
import { commonOptions } from './read-arguments.ts';

/** The help page of the whole program. */
export function helpOnAll(
  commands: readonly Command[],
  program: { readonly name: string; readonly version: string },
  paint: Paint,
): string {
  const rows = commands.map(
    ({ name, takes, summary }) => [`${name} ${takes}`, summary] as const,
  );
  return page([
    `${program.name} ${program.version}, structural calculations that a stranger can check with a pencil`,
    section('Write', ['sumzero COMMAND …'], paint),
    section('Commands', columns(rows), paint),
    section(
      'Options',
      columns([...optionRows(commonOptions), ['--version', 'show the version']]),
      paint,
    ),
    section(
      'Examples',
      columns(
        commands.flatMap(({ examples: [first] }) =>
          first === undefined ? [] : [[first.line, first.does] as const],
        ),
      ),
      paint,
    ),
    wrapped(
      'sumzero COMMAND --help tells more of one. Exit codes: 0 good, 1 something of yours to mend, 2 a fault of the program.',
    ),
  ]);
}

/** The help page of one command. */
export function helpOn(
  { name, takes, about, options, examples }: Command,
  paint: Paint,
): string {
  return page([
    section('Write', [`sumzero ${name} ${takes}`], paint),
    ...about.map(wrapped),
    section('Options', columns(optionRows({ ...options, ...commonOptions })), paint),
    section(
      'Examples',
      examples.flatMap(({ line, does }) => [line, `    ${does}`]),
      paint,
    ),
  ]);
}

function page(paragraphs: readonly string[]): string {
  return `${paragraphs.join('\n\n')}\n`;
}

function section(title: string, lines: readonly string[], paint: Paint): string {
  return [paint('strong', title), ...lines.map((line) => `  ${line}`)].join('\n');
}

function optionRows(
  options: Readonly<Record<string, Option>>,
): readonly (readonly [string, string])[] {
  return Object.entries(options).map(([name, { short, value, about }]) => {
    const spelling = short === undefined ? `--${name}` : `-${short}, --${name}`;
    return [value === undefined ? spelling : `${spelling} ${value}`, about];
  });
}

/** A paragraph in lines of at most 80 columns, the width of a plain terminal. */
function wrapped(paragraph: string): string {
  return paragraph.replace(/(.{1,80})(?: |$)/gu, '$1\n').trimEnd();
}

/** Two columns, the second set in line. */
function columns(rows: readonly (readonly [string, string])[]): readonly string[] {
  const width = Math.max(0, ...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `${left.padEnd(width)}   ${right}`);
}
