import { layOut } from '../../src/layout/index.ts';
import type { LayoutTools, PagedDocument } from '../../src/layout/index.ts';
import type { Block, Report } from '../../src/report/index.ts';
import { defaultTheme } from '../../src/theme/index.ts';
import { createTypesetter } from '../../src/typeset/index.ts';
import { part, report } from './blocks.ts';
import { ownFonts } from './own-fonts.ts';

/** What laying out takes, with the program's own faces and look. */
export const layoutTools: LayoutTools = {
  theme: defaultTheme,
  fonts: ownFonts,
  typesetter: createTypesetter(ownFonts),
  images: {},
};

export function layOutReport(
  of: Report,
  tools: Partial<LayoutTools> = {},
): PagedDocument {
  return layOut(of, { ...layoutTools, ...tools });
}

/** A document of one part with these blocks. */
export function layOutBlocks(...blocks: readonly Block[]): PagedDocument {
  return layOutReport(report([part('Part', blocks)]));
}
