import { describe, expect, test } from 'vitest';
import { plainLook } from '../../src/typeset/equation-node.ts';
import type { KatexNode } from '../../src/typeset/katex-node.ts';
import { readFrame, readPicture } from '../../src/typeset/katex-pictures.ts';

const bare = { toMarkup: (): string => '' };

function svg(attributes: KatexNode['attributes'], shape: KatexNode): KatexNode {
  return { ...bare, attributes: attributes ?? {}, children: [shape] };
}

describe('reading SVG', () => {
  const path: KatexNode = { ...bare, pathName: 'p', alternate: 'M0 0 H10' };
  const holder = (attributes: KatexNode['attributes']): KatexNode => ({
    ...bare,
    classes: [],
    style: { height: '0.5em', minWidth: '1em' },
    children: [svg(attributes, path)],
  });

  test('a path keeps its view box, its fit and its data', () => {
    const node = holder({
      viewBox: '0 0 400000 522',
      preserveAspectRatio: 'xMaxYMin slice',
    });
    expect(readPicture(node, plainLook)).toMatchObject({
      kind: 'picture',
      tall: 0.5,
      width: { atLeast: 1 },
      pieces: [
        {
          kind: 'path',
          viewWidth: 400000,
          viewHeight: 522,
          fit: 'slice-right',
          data: 'M0 0 H10',
        },
      ],
    });
  });

  test('the data of a named path come from its markup', () => {
    const named: KatexNode = { pathName: 'vec', toMarkup: () => '<path d="M1 2"/>' };
    const node = { ...holder({}), children: [svg({ viewBox: '0 0 1 1' }, named)] };
    expect(readPicture(node, plainLook)).toMatchObject({ pieces: [{ data: 'M1 2' }] });
  });

  test('an aspect, a line or a box that is not known is refused', () => {
    const aspect = holder({ viewBox: '0 0 1 1', preserveAspectRatio: 'xMidYMax' });
    expect(() => readPicture(aspect, plainLook)).toThrow(/xMidYMax/);
    const line: KatexNode = {
      ...bare,
      attributes: { x1: '0', y1: '50%', x2: '1', y2: '0' },
    };
    const slanted = { ...holder({}), children: [svg({}, line)] };
    expect(() => readPicture(slanted, plainLook)).toThrow(/50%/);
    const box: KatexNode = { ...bare, classes: ['katex-stretchy'], children: [] };
    expect(() => readFrame(box, plainLook)).toThrow(/katex-stretchy/);
  });

  test('a span without SVG is no picture', () => {
    const span: KatexNode = { ...bare, classes: ['mord'], children: [] };
    expect(readPicture(span, plainLook)).toBeUndefined();
    expect(readFrame(span, plainLook)).toBeUndefined();
  });
});
