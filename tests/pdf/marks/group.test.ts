import { describe, expect, test } from 'vitest';
import type { GroupMark, Mark } from '../../../src/drawing/index.ts';
import { drawn } from '../../support/page-content.ts';

const dot: Mark = {
  kind: 'shape',
  path: [
    ['M', 0, 0],
    ['L', 1, 0],
  ],
  stroke: { width: 1, colour: [0, 0, 0] },
};
const drawnDot = '100 592 m 101 592 l S';
const group = (marks: readonly Mark[], more: Partial<GroupMark> = {}): GroupMark => ({
  kind: 'group',
  x: 0,
  y: 0,
  marks,
  ...more,
});

describe('a group', () => {
  test('moves its marks without an operator, groups in groups too', async () => {
    const inner = group([dot], { x: 3, y: -2 });
    const lines = await drawn([group([inner, dot], { x: 10, y: 20 })]);
    expect(lines.slice(1, -1)).toEqual([
      '113 574 m 114 574 l S',
      '110 572 m 111 572 l S',
    ]);
  });

  test('that stands for a text says so around its marks, within its element', async () => {
    expect(await drawn([group([dot], { actualText: 'R_A = 5 kip·ft (say)' })])).toEqual(
      [
        '/P <</MCID 0>> BDC',
        '/Span <</ActualText <FEFF0052005F0041002000' +
          '3D002000350020006B0069007000B7006600740020002800730061007900' +
          '29>>> BDC',
        drawnDot,
        'EMC',
        'EMC',
      ],
    );
    expect(await drawn([group([dot], { actualText: 'f(x) \\' })])).toContain(
      '/Span <</ActualText (f\\(x\\) \\\\)>> BDC',
    );
  });

  test('of the further lines of an equation says that they stand for nothing more', async () => {
    expect(await drawn([group([dot], { actualText: '' })])).toContain(
      '/Span <</ActualText ()>> BDC',
    );
  });

  test('inside one that already stands for a text adds no text of its own', async () => {
    const lines = await drawn([
      group([group([dot], { actualText: 'inner' })], { actualText: 'outer' }),
    ]);
    expect(lines.filter((line) => line.includes('ActualText'))).toEqual([
      '/Span <</ActualText (outer)>> BDC',
    ]);
  });

  test('that puts no ink on the page says no text either', async () => {
    expect(await drawn([group([], { actualText: 'nothing' })])).toEqual(['']);
  });

  test('cuts off what is outside its clip, and afterwards no more', async () => {
    const clip = { x: -5, y: -5, width: 10, height: 20 };
    expect(await drawn([group([dot], { x: 10, clip }), dot])).toEqual([
      '/P <</MCID 0>> BDC',
      'q',
      '105 577 10 20 re W n',
      '110 592 m 111 592 l S',
      'Q',
      drawnDot,
      'EMC',
    ]);
  });

  test('forgets colours and lines that were set inside its clip', async () => {
    const clip = { x: 0, y: 0, width: 10, height: 10 };
    const red: Mark = { ...dot, stroke: { width: 2, colour: [1, 0, 0] } };
    const lines = await drawn([group([red], { clip }), red]);
    expect(lines.filter((line) => line === '1 0 0 RG')).toHaveLength(2);
    expect(lines.filter((line) => line === '2 w')).toHaveLength(2);
  });

  test('of another element interrupts the text around it, which then goes on', async () => {
    const lines = await drawn([dot, group([dot], { element: 2 }), dot]);
    expect(lines.filter((line) => !line.endsWith('S'))).toEqual([
      '/P <</MCID 0>> BDC',
      'EMC',
      '/Span <</MCID 1>> BDC',
      'EMC',
      '/P <</MCID 2>> BDC',
      'EMC',
    ]);
  });

  test('that is an artifact stands outside the text', async () => {
    const lines = await drawn([
      dot,
      group([dot], { artifact: 'layout' }),
      group([dot], { artifact: 'pagination' }),
    ]);
    expect(lines.filter((line) => !line.endsWith('S'))).toEqual([
      '/P <</MCID 0>> BDC',
      'EMC',
      '/Artifact <</Type /Layout>> BDC',
      'EMC',
      '/Artifact <</Type /Pagination>> BDC',
      'EMC',
    ]);
  });

  test('shares one sequence with the groups of its element that follow it', async () => {
    const lines = await drawn([
      group([dot], { element: 2 }),
      group([dot], { element: 2 }),
    ]);
    expect(lines.filter((line) => line.includes('BDC'))).toEqual([
      '/Span <</MCID 0>> BDC',
    ]);
  });

  test('is refused where it is both, or where its text stands for marks of two owners', async () => {
    await expect(
      drawn([group([dot], { element: 2, artifact: 'layout' })]),
    ).rejects.toThrow('both');
    const two = group([dot, group([dot], { element: 2 })], { actualText: 'x' });
    await expect(drawn([two])).rejects.toThrow('two owners');
  });
});
