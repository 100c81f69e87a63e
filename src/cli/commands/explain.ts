import { codes, type Code, type CodeEntry } from '../../diagnostics/index.ts';
import type { Call, Command } from '../command.ts';
import { good } from '../exit-codes.ts';
import { paintFor, type Paint } from '../paint.ts';
import { unknownWord, type UsageFault } from '../usage-fault.ts';

/** Explains a code of a diagnostic, or lists them all. */
export const explain: Command = {
  name: 'explain',
  takes: '[CODE]',
  summary: 'tell what a code means and how to mend it',
  about: [
    'Every error and remark ends in a code in brackets. This command tells at length what the code means, how to mend what it names, and shows it wrong and right. Without a code it lists all.',
  ],
  options: {},
  examples: [
    { line: 'sumzero explain unit-missing', does: 'explain one code' },
    { line: 'sumzero explain', does: 'list all codes' },
  ],
  run: (call) => Promise.resolve(explainCode(call)),
};

function explainCode({ given, streams }: Call): number | UsageFault {
  const paint = paintFor(streams.coloured.out);
  // A code is copied with its brackets as often as without.
  const code = given.positionals[0]?.replace(/^\[|\]$/gu, '');
  if (code === undefined) {
    streams.out(listCodes(paint));
    return good;
  }
  if (!isCode(code)) return unknownWord('code', code, Object.keys(codes));
  streams.out(explanation(code, codes[code], paint));
  return good;
}

function isCode(word: string): word is Code {
  return Object.hasOwn(codes, word);
}

function listCodes(paint: Paint): string {
  const width = Math.max(...Object.keys(codes).map((code) => code.length));
  return Object.entries(codes)
    .map(
      ([code, { meaning }]) => `${paint('strong', code.padEnd(width))}  ${meaning}\n`,
    )
    .join('');
}

function explanation(
  code: string,
  { meaning, mend, example }: CodeEntry,
  paint: Paint,
): string {
  const shown =
    example === undefined
      ? ''
      : `\n${paint('error', 'Wrong')}\n${indented(example.wrong)}\n\n${paint('good', 'Right')}\n${indented(example.right)}\n`;
  return `${paint('strong', code)}\n\n${meaning}\n${mend}\n${shown}`;
}

function indented(text: string): string {
  return text
    .split('\n')
    .map((line) => `    ${line}`)
    .join('\n');
}
