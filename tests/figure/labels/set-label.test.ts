import { describe, expect, test } from 'vitest';
import { labelSetter } from '../../../src/figure/index.ts';
import { createTypesetter } from '../../../src/typeset/index.ts';
import { textsOf } from '../../support/flat-marks.ts';
import { ownFonts } from '../../support/own-fonts.ts';
import { equal, figure, symbol, words } from '../../support/pictures.ts';

const setLabel = labelSetter(ownFonts, createTypesetter(ownFonts));
const style = { size: 8, colour: [0, 0, 0] } as const;

describe('labelSetter', () => {
  test('words without descenders have a lower box than words with them', () => {
    expect(setLabel(words('A'), style).height).toBeLessThan(
      setLabel(words('Ap'), style).height,
    );
  });

  test('a symbol, a value and a line are set as mathematics', () => {
    expect(textsOf(setLabel(symbol('R', 'A'), style)).join('')).toBe('RA');
    expect(textsOf(setLabel(figure('8.4 kip'), style)).join('')).toBe('8.4kip');
    expect(textsOf(setLabel(equal('P', '1', '8.4 kip'), style)).join('')).toBe(
      'P1=8.4kip',
    );
  });

  test('mathematics is copied and found in linear form', () => {
    const [group] = setLabel(equal('P', '1', '8.4 kip'), style).marks;
    expect(group).toMatchObject({ kind: 'group' });
    expect(group!.kind === 'group' && group!.actualText).toContain('8.4');
  });

  test('a heavy label is set in heavier faces, its unit too', () => {
    const faces = (label: Parameters<typeof setLabel>[0]): string =>
      JSON.stringify(setLabel(label, { ...style, heavy: true }));
    expect(faces(words('12.5'))).toContain('text-semibold');
    expect(faces(figure('12.5 kip'))).not.toContain('KaTeX_Main-Regular');
  });

  test('a letter that no face has is drawn as its number, and told', () => {
    const missing: string[] = [];
    const set = labelSetter(ownFonts, createTypesetter(ownFonts), (character) =>
      missing.push(character),
    );
    expect(textsOf(set(words('漢'), style)).join('')).toBe('[U+6F22]');
    expect(textsOf(set(symbol('R', '漢'), style)).join('')).toContain('[U+6F22]');
    expect(missing).toEqual(['漢', '漢']);
  });
});
