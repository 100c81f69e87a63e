import type { YAMLError } from 'yaml';
import type { Code } from '../../diagnostics/index.ts';

/** A fault of YAML's grammar, as a user reads it. */
export interface SyntaxWords {
  readonly code: Code;
  readonly message: string;
  readonly hints: readonly string[];
}

const byCode: Readonly<Partial<Record<YAMLError['code'], SyntaxWords>>> = {
  TAB_AS_INDENT: {
    code: 'yaml-tab',
    message: 'a tab stands where YAML wants spaces',
    hints: ['indent with spaces'],
  },
  BAD_INDENT: {
    code: 'yaml-syntax',
    message: 'this line is not indented like its neighbours',
    hints: ['give all entries of one map or list the same number of spaces'],
  },
  MULTIPLE_DOCS: {
    code: 'yaml-several-documents',
    message: 'the file holds more than one document',
    hints: ['write one definition a file, without lines of `---`'],
  },
  TAG_RESOLVE_FAILED: {
    code: 'yaml-tag',
    message: 'tags such as `!name` mean nothing here',
    hints: ['take the tag out, or quote the text that begins with `!`'],
  },
  BAD_ALIAS: {
    code: 'yaml-alias',
    message: 'an alias needs a name after `*`',
    hints: ['quote the text that begins with `*`'],
  },
  BAD_SCALAR_START: {
    code: 'yaml-syntax',
    message: 'a text cannot begin with this sign',
    hints: ['put the text in quotes'],
  },
  BLOCK_AS_IMPLICIT_KEY: {
    code: 'yaml-syntax',
    message: 'a second colon stands on this line',
    hints: [
      'put a text that holds a colon and a space in quotes',
      'see whether the next line is indented too far',
    ],
  },
  MULTILINE_IMPLICIT_KEY: {
    code: 'yaml-syntax',
    message: 'a key and its colon must stand on one line',
    hints: ['look for a missing colon, or a missing closing bracket or brace'],
  },
  BAD_DQ_ESCAPE: {
    code: 'yaml-syntax',
    message: 'no such escape exists in a text in double quotes',
    hints: ['double the backslash, or use single quotes'],
  },
  MISSING_CHAR: {
    code: 'yaml-syntax',
    message: 'a closing sign is missing',
    hints: ['close every bracket, brace and quote; put a space after every colon'],
  },
  RESOURCE_EXHAUSTION: {
    code: 'yaml-too-deep',
    message: 'the file nests deeper than it can be read',
    hints: ['write lists and maps at most a few levels deep'],
  },
};

/** The words for a fault of the parser's; `detail` is its own account, kept where ours has none. */
export function syntaxWords(code: YAMLError['code'], detail: string): SyntaxWords {
  return (
    byCode[code] ?? {
      code: 'yaml-syntax',
      message: `the file is not well-formed YAML: ${tidied(detail)}`,
      hints: [],
    }
  );
}

const tidied = (detail: string): string =>
  detail
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/\.$/, '')
    .replace(/^[A-Z](?![A-Z])/, (first) => first.toLowerCase());
