import { describe, expect, test } from 'vitest';
import { ems, readLook } from '../../src/typeset/katex-look.ts';
import type { KatexNode } from '../../src/typeset/katex-node.ts';

const node = (parts: Partial<KatexNode>): KatexNode => ({
  toMarkup: () => '',
  ...parts,
});

describe('reading what a node says of itself', () => {
  test('a class that is not known is refused by name', () => {
    expect(() => readLook(node({ classes: ['mord', 'newfangled'] }))).toThrow(
      /"newfangled"/,
    );
  });

  test('a style that is not known is refused by name', () => {
    expect(() => readLook(node({ style: { rotate: '90deg' } }))).toThrow(/"rotate"/);
  });

  test('a length in another unit is refused', () => {
    expect(ems('-0.25em')).toBe(-0.25);
    expect(ems(undefined)).toBe(0);
    expect(() => ems('3px')).toThrow(/"3px"/);
  });

  test('size classes change the font size by the ratio of two steps', () => {
    const { look } = readLook(
      node({ classes: ['katex-sizing', 'reset-size6', 'size3'] }),
    );
    expect(look.scale).toBeCloseTo(0.7, 12);
  });

  test('size classes beside delimsizing are faces', () => {
    const { look } = readLook(node({ classes: ['delimsizing', 'size3'] }));
    expect(look).toMatchObject({ scale: 1, face: { family: 'Size3' } });
  });

  test('faces of several classes add up', () => {
    const { look } = readLook(
      node({ classes: ['mord', 'textsf', 'textbf', 'textit'] }),
    );
    expect(look.face).toEqual({ family: 'SansSerif', bold: true, italic: true });
  });

  test('an italic correction is room after a symbol, never before the next one', () => {
    const room = (italic: number): number =>
      readLook(node({ text: 'f', italic })).look.after;
    expect(room(0.1)).toBe(0.1);
    expect(room(-0.1)).toBe(0);
    expect(readLook(node({ children: [], italic: 0.44 })).look.after).toBe(0);
  });

  test('top and left count where the node is positioned alone', () => {
    const style = { top: '0.2em', left: '0.1em' };
    expect(readLook(node({ classes: ['mord'], style })).look).toMatchObject({
      drop: 0,
      shift: 0,
    });
    expect(readLook(node({ classes: ['delimcenter'], style })).look).toMatchObject({
      drop: 0.2,
      shift: 0.1,
    });
    expect(
      readLook(node({ style: { ...style, position: 'relative' } })).look.drop,
    ).toBe(0.2);
  });

  test('roles for line breaking come from the atom’s class', () => {
    const role = (...classes: string[]): string =>
      readLook(node({ classes })).look.role;
    expect(role('mrel')).toBe('relation');
    expect(role('mbin', 'mtight')).toBe('operator');
    expect(role('mspace', 'nobreak')).toBe('break-forbidden');
    expect(role('mord')).toBe('other');
  });
});
