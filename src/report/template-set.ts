import Handlebars from 'handlebars';
import {
  toLinear,
  type Expression,
  type Name,
  type Statement,
} from '../equation/index.ts';
import type { FigureSpec } from '../figure/index.ts';
import { quantityText } from '../units/index.ts';

/** Something that a template placed by reference, because it is no text: an equation, a drawing, lines of a file. */
export type Placed =
  | { readonly kind: 'statement'; readonly statement: Statement }
  | { readonly kind: 'expression'; readonly expression: Expression }
  | { readonly kind: 'figure'; readonly figure: FigureSpec }
  | { readonly kind: 'listing'; readonly lines: readonly string[] };

/** What filling a template gives: XHTML, and the things that its references stand for. */
export interface Filled {
  readonly xhtml: string;
  readonly placed: readonly Placed[];
}

/** A template could not be read or filled: whose it is, where, and why. */
export interface TemplateFault {
  readonly template: string;
  /** Line in the template, from 1, where it is known. */
  readonly line?: number;
  readonly message: string;
}

/** The templates of a package, by file name without `.hbs`; a project's own stand in place of the program's. */
export interface TemplateSet {
  readonly fill: (
    name: string,
    facts: object,
  ) => Filled | { readonly fault: TemplateFault };
}

/**
 * Compiles templates as they are first used. Helpers that templates may call:
 * `equation` (a statement as a block), `math` (an expression in the line), `value` (a figure as
 * text), `figure` (a drawing), `listing` (lines of a file), `equals`, `either`, `list` (words joined
 * with commas and `and`), `plural`, `capital`,
 * `present` (whether an anchor is in the package), `ordinal` (a place counted from 1), `stepTemplate` (the
 * template of a kind of step).
 */
export function openTemplates(
  sources: Readonly<Record<string, string>>,
  anchors: ReadonlySet<string> = new Set(),
): TemplateSet {
  const handlebars = Handlebars.create();
  for (const [name, text] of Object.entries(sources))
    handlebars.registerPartial(name, text);
  addWordHelpers(handlebars);
  handlebars.registerHelper('present', (anchor: string) => anchors.has(anchor));
  // Compiling costs more than filling; the member's template is filled once a member.
  const compiled = new Map<string, Handlebars.TemplateDelegate>();
  const compile = (name: string, source: string): Handlebars.TemplateDelegate => {
    const template = compiled.get(name) ?? handlebars.compile(source);
    compiled.set(name, template);
    return template;
  };
  return {
    fill: (name, facts) => {
      const source = sources[name];
      if (source === undefined)
        return {
          fault: { template: `${name}.hbs`, message: 'there is no such template' },
        };
      const placed: Placed[] = [];
      addPlacingHelpers(handlebars, placed);
      try {
        return { xhtml: compile(name, source)(facts), placed };
      } catch (error) {
        return { fault: faultOf(name, sources, error) };
      }
    },
  };
}

/** A fault names the file that holds it: the partial whose own text does not parse, else the template filled. */
function faultOf(
  name: string,
  sources: Readonly<Record<string, string>>,
  error: unknown,
): TemplateFault {
  const broken = Object.entries(sources).find(([, text]) => !parses(text));
  const message = error instanceof Error ? error.message : String(error);
  const line = /(?:line|Parse error on line) (\d+)/.exec(message)?.[1];
  return {
    template: `${broken?.[0] ?? name}.hbs`,
    ...(line === undefined ? {} : { line: Number(line) }),
    message: tidyMessage(message),
  };
}

function tidyMessage(message: string): string {
  const [first = ''] = message
    .replace(/^Parse error on line \d+:\s*/, 'cannot be parsed: ')
    .split('\n');
  return first.trim();
}

function parses(text: string): boolean {
  try {
    Handlebars.parse(text);
    return true;
  } catch {
    return false;
  }
}

type Handle = typeof Handlebars;

/** Helpers that place an object by the number of its reference. */
function addPlacingHelpers(handlebars: Handle, placed: Placed[]): void {
  const place = (
    tag: string,
    item: Placed,
    attributes: string = '',
  ): Handlebars.SafeString => {
    placed.push(item);
    return new Handlebars.SafeString(
      `<${tag} ref="${placed.length - 1}"${attributes}/>`,
    );
  };
  handlebars.registerHelper('equation', (statement: Statement) =>
    place('equation', {
      kind: 'statement',
      statement: wanted('equation', statement, 'lines'),
    }),
  );
  handlebars.registerHelper('math', (expression: Expression) =>
    place('math', {
      kind: 'expression',
      expression: wanted('math', expression, 'kind'),
    }),
  );
  handlebars.registerHelper('symbol', (symbol: Name['symbol']) =>
    place('math', {
      kind: 'expression',
      expression: { kind: 'name', symbol: wanted('symbol', symbol, 'letter') },
    }),
  );
  handlebars.registerHelper('figure', (figure: FigureSpec) =>
    place('drawing', { kind: 'figure', figure: wanted('figure', figure, 'kind') }),
  );
  handlebars.registerHelper('listing', (lines: readonly string[]) =>
    place('listing', { kind: 'listing', lines: wanted('listing', lines, 'length') }),
  );
}

/** What a helper was given, or an error that becomes the template's fault: a misspelt name gives nothing. */
function wanted<T>(helper: string, given: T, key: string): T {
  if (typeof given === 'object' && given !== null && key in given) return given;
  throw new Error(
    `{{${helper} …}} is given nothing that it can place; is the name right?`,
  );
}

/** Helpers that only make words. */
function addWordHelpers(handlebars: Handle): void {
  handlebars.registerHelper('value', (expression: Expression) =>
    valueText(wanted('value', expression, 'kind')),
  );
  handlebars.registerHelper('equals', (a: unknown, b: unknown) => a === b);
  handlebars.registerHelper('either', (a: unknown, b: unknown) =>
    a === undefined || a === '' ? b : a,
  );
  handlebars.registerHelper('list', (words: readonly string[]) => listOf(words));
  handlebars.registerHelper(
    'plural',
    (count: number, one: string, many: string) =>
      `${spelled(count)} ${count === 1 ? one : many}`,
  );
  handlebars.registerHelper(
    'capital',
    (words: string) => words.charAt(0).toUpperCase() + words.slice(1),
  );
  handlebars.registerHelper('ordinal', (index: number) => String(index + 1));
  handlebars.registerHelper('stepTemplate', (kind: string) => `step-${kind}`);
}

/** A figure as text with its unit; any other expression in linear form. */
export function valueText(expression: Expression): string {
  if (expression.kind !== 'figure') return toLinear(expression);
  return quantityText(expression.quantity, expression.unit, expression.print);
}

function listOf(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

const numerals = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

function spelled(count: number): string {
  return numerals[count] ?? String(count);
}
