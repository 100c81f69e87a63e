import { describe, expect, test } from 'vitest';
import type { PictureLoad } from '../../../src/figure/index.ts';
import { filledHeads, flatMarks, pointsOf, textsOf } from '../../support/flat-marks.ts';
import { layMember } from '../../support/lay-figures.ts';
import { beam, couple, down, push, uniform, varying } from '../../support/pictures.ts';
import { defaultTheme } from '../../../src/theme/index.ts';

/** Height of the member's line. */
function memberHeight(drawing: Parameters<typeof flatMarks>[0]): number {
  const line = flatMarks(drawing).find(
    (mark) => mark.kind === 'shape' && mark.stroke?.width === defaultTheme.line.member,
  );
  return line?.kind === 'shape' ? pointsOf(line.path)[0]!.y : NaN;
}

const supported = {
  supports: [
    { x: 0, type: 'pin' },
    { x: 20, type: 'roller' },
  ],
} as const;

describe('a member as loaded', () => {
  test('a downward load ends at the member, its tip nearer than its tail', () => {
    const { drawing } = layMember(beam(20, { ...supported, loads: [down(8, 5)] }));
    const [head] = filledHeads(drawing);
    expect(head!.tip.y).toBeGreaterThan(head!.back.y);
    expect(memberHeight(drawing) - head!.tip.y).toBeGreaterThan(0);
    expect(memberHeight(drawing) - head!.tip.y).toBeLessThan(2);
  });

  test('an upward load comes from below', () => {
    const { drawing } = layMember(beam(20, { ...supported, loads: [push(8, 90, 5)] }));
    const [head] = filledHeads(drawing);
    expect(head!.tip.y).toBeLessThan(head!.back.y);
    expect(head!.tip.y).toBeGreaterThan(memberHeight(drawing));
  });

  test('an upward load over a support pulls from above instead', () => {
    const { drawing } = layMember(beam(20, { ...supported, loads: [push(0, 90, 5)] }));
    const [head] = filledHeads(drawing);
    expect(head!.tip.y).toBeLessThan(head!.back.y);
    expect(head!.back.y).toBeLessThan(memberHeight(drawing));
  });

  test('stations are to scale', () => {
    const loads = [4, 10, 16].map((x) => down(x, 5));
    const { drawing } = layMember(beam(20, { ...supported, loads }));
    const [a, b, c] = filledHeads(drawing).map(({ tip }) => tip.x);
    expect(b! - a!).toBeCloseTo(c! - b!, 6);
  });

  test('the greater of two loads has the longer arrow', () => {
    const loads = [down(5, 10), down(15, 5)];
    const { labels } = layMember(beam(20, { ...supported, loads }));
    // Labels stand on their arrows.
    expect(labels[0]!.bottom).toBeLessThan(labels[1]!.bottom);
  });

  test('all arrows of a distributed load point its way, and at the member', () => {
    const { drawing } = layMember(
      beam(20, { ...supported, loads: [uniform(2, 18, 1)] }),
    );
    const heads = filledHeads(drawing);
    expect(heads.length).toBeGreaterThan(20);
    for (const { tip, back } of heads) {
      expect(tip.y).toBeGreaterThan(back.y);
      expect(memberHeight(drawing) - tip.y).toBeLessThan(2);
    }
  });

  test('a load that changes its sign crosses to the other side', () => {
    const free = beam(20, { loads: [varying(0, 20, [1, -1])] });
    const { drawing } = layMember(free);
    const axis = memberHeight(drawing);
    const heads = filledHeads(drawing);
    const [first, last] = [heads[0]!, heads.at(-1)!];
    expect(first.back.y).toBeLessThan(axis);
    expect(first.tip.y).toBeGreaterThan(first.back.y);
    expect(last.back.y).toBeGreaterThan(axis);
    expect(last.tip.y).toBeLessThan(last.back.y);
  });

  test('a point load stands on a distributed load, not across it', () => {
    const loads = [uniform(0, 20, 1), down(8, 5)];
    const { drawing } = layMember(beam(20, { ...supported, loads }));
    const heads = filledHeads(drawing);
    const highest = Math.min(...heads.map(({ tip }) => tip.y));
    expect(memberHeight(drawing) - highest).toBeGreaterThan(15);
  });

  test('a small point load is not hidden among the arrows of a distributed load', () => {
    const loads = [
      uniform(0, 20, 1),
      ...[3.1, 7.3, 9.9].map((x) => down(x, 0.1)),
      down(15, 9),
    ];
    const { drawing } = layMember(beam(20, { ...supported, loads }));
    const axis = memberHeight(drawing);
    const raised = filledHeads(drawing).filter(({ tip }) => axis - tip.y > 15);
    expect(raised).toHaveLength(4);
  });

  test('loads that would cover others stand in a row of their own', () => {
    const one = layMember(beam(20, { ...supported, loads: [uniform(0, 20, 1)] }));
    const two = layMember(
      beam(20, { ...supported, loads: [uniform(0, 20, 1), uniform(5, 15, 1)] }),
    );
    expect(two.drawing.height).toBeGreaterThan(one.drawing.height + 20);
  });

  test('each case has a row and its tag, the first case on the member', () => {
    const of = (load: PictureLoad, name: string): PictureLoad => ({
      ...load,
      case: name,
    });
    const { drawing } = layMember(
      beam(20, {
        ...supported,
        loads: [of(uniform(0, 20, 1), 'D'), of(down(5, 3), 'L'), of(down(5, 4), 'D')],
      }),
    );
    expect(textsOf(drawing)).toEqual(expect.arrayContaining(['D', 'L']));
    const tags = flatMarks(drawing).filter(
      (mark) => mark.kind === 'glyphs' && mark.face === 'text-semibold',
    );
    expect(tags).toHaveLength(2);
    const [dead, live] = tags;
    expect(
      dead!.kind === 'glyphs' && live!.kind === 'glyphs' && dead!.y > live!.y,
    ).toBe(true);
  });

  test('one case alone has no tag', () => {
    const loads = [{ ...down(5, 3), case: 'D' }];
    expect(textsOf(layMember(beam(20, { loads })).drawing)).not.toContain('D');
  });

  test('a couple turns about its point', () => {
    const { drawing } = layMember(beam(20, { loads: [couple(10, 'clockwise', 5)] }));
    const [head] = filledHeads(drawing);
    const centre = { x: 205, y: memberHeight(drawing) };
    const way = { x: head!.tip.x - head!.back.x, y: head!.tip.y - head!.back.y };
    const arm = { x: head!.back.x - centre.x, y: head!.back.y - centre.y };
    expect(arm.x * way.y - arm.y * way.x).toBeGreaterThan(0);
  });
});
