import { readWorked } from '../../../src/project/kinds/worked/read-worked.ts';
import { checkWorked, type MarkedStep } from '../../../src/review/index.ts';
import type { Sheet, SheetStep, SheetTerm, Taste } from './narrated-sheet.ts';
import { figures } from './write-line.ts';

/** A slip in one step of a sheet: its terms otherwise, or what it concludes. */
export interface SheetSlip {
  readonly step: number;
  readonly terms?: readonly SheetTerm[];
  /** What is concluded for what follows from the line. */
  readonly concludes?: (count: number) => string;
}

/** A sheet as it is written: every step worked from what the worker found before. */
export function writtenSheet(sheet: Sheet, taste: Taste, slip?: SheetSlip): string {
  const found = new Map<string, string>();
  const steps = sheet.steps.map((step, at) => {
    const bits = taste.bits[(at * 3 + 1) % 24]!;
    const own = slip?.step === at ? slip : undefined;
    return slip === undefined && step.solved !== undefined
      ? solvedStep(step, step.solved, { found, hasSo: (bits & 32) === 0 })
      : summedStep(step, own, { found, isAsNumber: (bits & 16) !== 0 });
  });
  return `${sheet.head}steps:\n${steps.join('')}`;
}

/** `R = … = …`, with or without its conclusion once more. */
function solvedStep(
  step: SheetStep,
  line: string,
  { found, hasSo }: { readonly found: Map<string, string>; readonly hasSo: boolean },
): string {
  const text = figures(step.count, 3);
  found.set(step.symbol, text);
  const so = hasSo ? `, so: "${step.symbol} = ${text} ${step.unit}"` : '';
  return `  - { ${step.head}, write: ${JSON.stringify(line)}${so} }\n`;
}

function summedStep(
  step: SheetStep,
  slip: SheetSlip | undefined,
  {
    found,
    isAsNumber,
  }: { readonly found: Map<string, string>; readonly isAsNumber: boolean },
): string {
  const terms = slip?.terms ?? step.terms;
  const count = concluded(step, terms, { found, isAltered: slip?.terms !== undefined });
  const text = slip?.concludes?.(count) ?? figures(count, 3);
  const line = lineOf(terms, { found, isAsNumber }) + step.ending;
  found.set(step.symbol, text);
  return `  - { ${step.head}, write: ${JSON.stringify(withUnit(line, step))}, so: "${step.symbol} = ${text} ${step.unit}" }\n`;
}

/** What a step comes to: the truth where nothing before it is amiss, else by the figures in use. */
function concluded(
  step: SheetStep,
  terms: readonly SheetTerm[],
  {
    found,
    isAltered,
  }: { readonly found: ReadonlyMap<string, string>; readonly isAltered: boolean },
): number {
  const worth = ({ sign, size, factor, repeats, outBy = 1 }: SheetTerm): number =>
    sign * factor * (repeats === undefined ? size : Number(found.get(repeats)) * outBy);
  const open = terms.find(({ isOpen, text }) => isOpen && text.startsWith(step.symbol));
  const rest = terms
    .filter(({ isOpen }) => !isOpen)
    .reduce((sum, term) => sum + worth(term), 0);
  const own = open === undefined ? rest : -rest / (open.sign * open.factor);
  const gross = terms
    .filter(({ isOpen }) => !isOpen)
    .reduce((sum, term) => sum + Math.abs(worth(term)), 0);
  // What the rounding of great terms leaves of a small difference is the truth rounded.
  const room = 0.002 * Math.abs(gross / (open?.factor ?? 1));
  const isNear =
    Math.abs(own - step.count) <= Math.max(0.01 * Math.abs(step.count), room);
  return (isNear && !isAltered) || Number.isNaN(own) ? step.count : own;
}

function lineOf(
  terms: readonly SheetTerm[],
  {
    found,
    isAsNumber,
  }: { readonly found: ReadonlyMap<string, string>; readonly isAsNumber: boolean },
): string {
  return terms
    .map(({ sign, text, repeats, outBy }) => {
      const value = Number(found.get(repeats ?? '')) * (outBy ?? 1);
      const isNumber = isAsNumber || outBy !== undefined;
      // What was found is written as a number with its own sign in that of the term, or as its symbol.
      const own = isNumber && value < 0 ? -sign : sign;
      const lead = isNumber
        ? `${figures(Math.abs(value), 3)} @${repeats}`
        : (repeats ?? '');
      return `${own < 0 ? '-' : '+'} ${text.replace('{}', lead)}`;
    })
    .join(' ')
    .replace(/^\+ /u, '');
}

/** The unit of a value that is repeated is that of its symbol. */
function withUnit(line: string, { unit }: SheetStep): string {
  const [force, length] = unit.split(' ');
  const own = length ?? (force === 'kip' ? 'ft' : 'm');
  return line
    .replaceAll(/@M_\S+/gu, `${force} ${own}`)
    .replaceAll(/@\S+/gu, force ?? '');
}

/** Marks a written sheet. */
export function markedSheet(sheet: Sheet, text: string): readonly MarkedStep[] {
  const file = { path: 'worked/a.yaml', text, sha256: '' };
  const worked = readWorked(file, sheet.project.definition.units);
  const [marked] = checkWorked({ ...sheet.project, worked: [worked] }, sheet.members);
  if (marked === undefined || marked.fault !== undefined)
    throw new Error(marked?.fault?.message ?? 'no file');
  return marked.steps;
}
