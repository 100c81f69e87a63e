import { parseDocument, type Document, type YAMLError } from 'yaml';
import type { Span } from '../../diagnostics/index.ts';
import type { Reading } from '../reading.ts';
import { growTree } from './grow-tree.ts';
import { tooDeepAt } from './nesting.ts';
import { hashSlipHint } from './slips.ts';
import { syntaxWords } from './syntax-words.ts';
import type { Tree } from './tree.ts';

/**
 * Parses a definition file into a tree; undefined where it cannot be parsed, all faults reported.
 * YAML 1.2 with the failsafe schema: scalars stay text.
 */
export function readYaml(reading: Reading): Tree | undefined {
  const document = parsed(reading);
  if (document === undefined) return undefined;
  const faults = [...document.errors, ...document.warnings];
  // A second fault at one place is the parser's echo of the first, and after many all are.
  const own = faults.filter(
    (fault, index) => fault.pos[0] !== faults[index - 1]?.pos[0],
  );
  for (const fault of own.slice(0, mostFaults)) reportFault(fault, reading);
  if (faults.length > 0) return undefined;
  if (document.contents === null) {
    reading.report({
      code: 'yaml-empty',
      message: 'the file holds no definition',
      span: { file: reading.file, start: 0, end: 0 },
      hints: ['write the definition, or take the file away'],
    });
    return undefined;
  }
  return growTree(document, reading);
}

/** Faults of grammar that are told of one file; a file with more is no YAML at all. */
const mostFaults = 20;
/** No definition nests as deep by far, and the parser is safe up to here. */
const deepest = 200;

function parsed(reading: Reading): Document.Parsed | undefined {
  const { file, text } = reading;
  const deep = tooDeepAt(text, deepest);
  if (deep === undefined)
    return parseDocument(text, {
      schema: 'failsafe',
      uniqueKeys: false,
      prettyErrors: false,
      // At `silent` the parser would keep a second document to itself.
      logLevel: 'error',
    });
  reading.report({
    code: 'yaml-too-deep',
    message: 'the file nests deeper than it can be read',
    span: { file, start: deep, end: Math.min(deep + 1, text.length) },
    hints: ['write lists and maps at most a few levels deep'],
  });
  return undefined;
}

function reportFault(fault: YAMLError, reading: Reading): void {
  const span = spanWithin(fault.pos, reading);
  const words = syntaxWords(fault.code, fault.message);
  const slip = hashSlipHint(reading.text, span.start);
  reading.report({
    code: words.code,
    message: words.message,
    span,
    hints: [...(slip === undefined ? [] : [slip]), ...words.hints],
  });
}

function spanWithin(pos: readonly [number, number], reading: Reading): Span {
  const length = reading.text.length;
  const start = Math.max(0, Math.min(pos[0], length));
  return { file: reading.file, start, end: Math.max(start, Math.min(pos[1], length)) };
}
