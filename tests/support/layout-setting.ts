import { openHyphenator } from '../../src/layout/hyphenate.ts';
import { setBlocks } from '../../src/layout/set-blocks.ts';
import type { Column, SetBlock, Setting } from '../../src/layout/setting.ts';
import { openAnchors } from '../../src/layout/sheet-numbers.ts';
import { openWords } from '../../src/layout/words.ts';
import type { Block } from '../../src/report/index.ts';
import { layoutTools } from './layout-tools.ts';
import { ownFonts } from './own-fonts.ts';

/** The setting of a package with one anchor, `part`, on sheet 7 of 9. */
export function openSetting(
  remark: (remark: string) => void = () => undefined,
): Setting {
  const counted = { sheets: new Map([['part', 7]]), sheetCount: 9 };
  const setting: Omit<Setting, 'setBlocks'> = {
    theme: layoutTools.theme,
    fonts: ownFonts,
    typesetter: layoutTools.typesetter,
    words: openWords(ownFonts, remark),
    hyphenate: openHyphenator(),
    anchors: openAnchors(counted, new Map([['part', 'Part']])),
    hasImage: () => true,
    remark,
  };
  const set = (blocks: readonly Block[], column: Column): SetBlock =>
    setBlocks(blocks, column, { setting, askedSoFar: () => 0, kept: new Map() });
  return { ...setting, setBlocks: set };
}
