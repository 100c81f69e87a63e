import type { Diagnostic } from '../diagnostics/index.ts';
import type { Block } from './blocks.ts';
import { blocksOf, StrayText } from './markup/blocks-of.ts';
import { UnknownElement } from './markup/inline.ts';
import { readXhtml } from './markup/read-xhtml.ts';
import type { TemplateSet } from './template-set.ts';

/** Fills one template and reads what comes out as blocks, or says what is wrong with the template. */
export function fillToBlocks(
  templates: TemplateSet,
  name: string,
  facts: object,
): { readonly blocks: readonly Block[] } | { readonly diagnostic: Diagnostic } {
  const filled = templates.fill(name, facts);
  if ('fault' in filled) {
    const { template, line, message } = filled.fault;
    return fault(
      `report-templates/${template}${line === undefined ? '' : `, line ${line}`}: ${message}`,
    );
  }
  const read = readXhtml(filled.xhtml);
  if ('fault' in read) {
    return fault(
      `report-templates/${name}.hbs gives markup that is not well formed: ${read.fault.message}, at “${read.fault.line.slice(0, 80)}”`,
    );
  }
  try {
    return { blocks: blocksOf(read.root.children, filled.placed) };
  } catch (error) {
    if (error instanceof UnknownElement || error instanceof StrayText) {
      return fault(`report-templates/${name}.hbs: ${error.message}`);
    }
    throw error;
  }
}

function fault(message: string): { readonly diagnostic: Diagnostic } {
  return {
    diagnostic: {
      severity: 'error',
      code: 'template-fault',
      message,
      hints: [
        'compare it with the program’s own template of that name, or take it out to use that one',
      ],
    },
  };
}
