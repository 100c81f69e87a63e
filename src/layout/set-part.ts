import type { Part } from '../report/index.ts';
import { anchorBands } from './band.ts';
import type { Band } from './band.ts';
import { elementNode } from './element-node.ts';
import type { ElementNode } from './element-node.ts';
import { paginate } from './paginate.ts';
import type { PageRange } from './paginate.ts';
import type { Sheet } from './paper.ts';
import { setBlocks } from './set-blocks.ts';
import type { BlockSetter } from './set-blocks.ts';
import type { AnchorBook, SetBlock, Setting } from './setting.ts';

/** A part set and broken into pages, with what it took from outside to set it. */
export interface SetPart {
  readonly part: Part;
  readonly sheet: Sheet;
  readonly bands: readonly Band[];
  readonly pages: readonly PageRange[];
  readonly node: ElementNode;
  /** Blocks that asked nothing and need not be set again. */
  readonly kept: Map<string, SetBlock>;
  /** True as long as everything that it asked of the anchors is still answered the same. */
  readonly stillHolds: (anchors: AnchorBook) => boolean;
}

/** Everything that setting a part needs and that is the same for all parts. */
export type PartTools = Omit<Setting, 'anchors' | 'setBlocks'>;

/** A part, the paper for it, and what an earlier round has left of it. */
export interface PartToSet {
  readonly part: Part;
  readonly sheet: Sheet;
  readonly kept?: Map<string, SetBlock>;
}

/** Sets a part's blocks, breaks them into pages, and remembers what it asked for on the way. */
export function setPart(
  { part, sheet, kept = new Map<string, SetBlock>() }: PartToSet,
  anchors: AnchorBook,
  tools: PartTools,
): SetPart {
  const asked: ((now: AnchorBook) => boolean)[] = [];
  const remember = <Answer extends string | undefined>(
    answer: Answer,
    ask: (now: AnchorBook) => Answer,
  ): Answer => {
    asked.push((now) => ask(now) === answer);
    return answer;
  };
  const setting: BlockSetter['setting'] = {
    ...tools,
    anchors: {
      sheetOf: (anchor) =>
        remember(anchors.sheetOf(anchor), (now) => now.sheetOf(anchor)),
      says: (anchor) => {
        const says = remember(anchors.says(anchor), (now) => now.says(anchor));
        if (says === undefined) tools.remark(unknownAnchor(anchor));
        return says;
      },
      sheetCount: () => remember(anchors.sheetCount(), (now) => now.sheetCount()),
    },
  };
  const askedSoFar = (): number => asked.length;
  const set = setBlocks(part.blocks, sheet.column, { setting, askedSoFar, kept });
  const bands = anchorBands(set.bands, part.anchor);
  return {
    part,
    sheet,
    bands,
    pages: paginate(bands, sheet.column.height),
    node: elementNode('Part', set.nodes, { title: part.title }),
    kept,
    stillHolds: (now) => asked.every((holds) => holds(now)),
  };
}

function unknownAnchor(anchor: string): string {
  return `Nothing in the package is called “${anchor}”: what refers to it is no link and has no sheet number.`;
}
