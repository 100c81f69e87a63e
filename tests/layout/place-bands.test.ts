import { expect, test } from 'vitest';
import type { Band, Frame } from '../../src/layout/band.ts';
import { placeBands } from '../../src/layout/place-bands.ts';

const band = (height: number, more: Partial<Band> = {}): Band => {
  return { height, above: 4, below: 6, breakBefore: 0, pieces: [], ...more };
};

test('stacks the bands of a page from its top, gaps between them alone', () => {
  const bands = [band(10), band(20), band(30), band(40)];
  expect(placeBands(bands, { from: 1, to: 4 }).map(({ y }) => y)).toEqual([0, 26, 62]);
});

test('repeats what the first band of a further page asks for, in that band’s frames', () => {
  const frame: Frame = { kind: 'box', x: 0, width: 100 };
  const bands = [band(10), band(20, { repeats: [band(7)], frames: [frame] })];
  const placed = placeBands(bands, { from: 1, to: 2 });
  expect(placed.map(({ y, band: { height } }) => [y, height])).toEqual([
    [0, 7],
    [7, 20],
  ]);
  expect(placed[0]!.band.frames).toEqual([frame]);
  expect(placeBands(bands, { from: 0, to: 2 })).toHaveLength(2);
});
