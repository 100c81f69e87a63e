import { describe, expect, test } from 'vitest';
import { anchorPart } from '../../src/layout/outline.ts';
import { group, heading, list, paragraph, part } from '../support/blocks.ts';

describe('anchorPart', () => {
  test('gives an anchor to each heading with a bookmark, and leaves given ones alone', () => {
    const { part: anchored } = anchorPart(
      part('Beam', [
        heading(2, 'Given', { bookmark: 2 }),
        group('section', [heading(3, 'Loads', { bookmark: 3, anchor: 'loads' })]),
        heading(3, 'No bookmark'),
      ]),
    );
    expect(anchored.blocks).toMatchObject([
      { anchor: 'beam-heading-1' },
      { blocks: [{ anchor: 'loads' }] },
      {},
    ]);
    expect('anchor' in anchored.blocks[2]!).toBe(false);
  });

  test('calls anchors by what stands at them', () => {
    const { titles } = anchorPart(
      part('Beam B1', [
        heading(2, 'Given', { anchor: 'given' }),
        group('box', [heading(3, 'Results'), paragraph('x')], 'results'),
        group('keep', [paragraph('no heading')], 'kept'),
        list([[heading(3, 'Inside', { anchor: 'inside' })]]),
      ]),
    );
    expect(Object.fromEntries(titles)).toEqual({
      'beam-b1': 'Beam B1',
      given: 'Given',
      results: 'Results',
      kept: 'Beam B1',
      inside: 'Inside',
    });
  });

  test('nests bookmarks by their depth', () => {
    const { bookmark } = anchorPart(
      part('Beam', [
        heading(1, 'B1 · Beam', { bookmark: 1, anchor: 'top' }),
        heading(2, 'Given', { bookmark: 2, anchor: 'a' }),
        heading(3, 'Loads', { bookmark: 3, anchor: 'b' }),
        heading(2, 'Results', { bookmark: 2, anchor: 'c' }),
      ]),
    );
    expect(bookmark).toEqual({
      title: 'Beam',
      anchor: 'beam',
      children: [
        {
          title: 'Given',
          anchor: 'a',
          children: [{ title: 'Loads', anchor: 'b', children: [] }],
        },
        { title: 'Results', anchor: 'c', children: [] },
      ],
    });
  });
});
