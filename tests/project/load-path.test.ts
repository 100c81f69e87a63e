import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadPath } from '../../src/project/index.ts';
import { beamYaml, readFolder } from '../support/folder.ts';

type Members = Parameters<typeof loadPath>[0];

/** Members in sheet order with the marks that each carries reactions of. */
const members = (carry: Readonly<Record<string, readonly string[]>>): Members =>
  Object.entries(carry).map(([mark, others]) => ({
    mark,
    carried: others.map((member) => ({
      member,
    })) as unknown as Members[number]['carried'],
  }));

describe('the load path', () => {
  test('keeps the sheet order where nothing leans on anything', () => {
    expect(loadPath(members({ B2: [], B1: [], G1: [] }))).toEqual({
      order: ['B2', 'B1', 'G1'],
      circles: [],
    });
  });

  test('puts a member after those that it leans on, however far they stand in the order', () => {
    expect(
      loadPath(members({ G1: ['B1', 'B2'], B1: ['J1'], B2: [], J1: [] })).order,
    ).toEqual(['B2', 'J1', 'B1', 'G1']);
  });

  test('does not count reactions of members that are not there', () => {
    expect(loadPath(members({ G1: ['B9'] })).order).toEqual(['G1']);
  });

  test('finds circles apart from what leans on them', () => {
    const found = loadPath(members({ A: ['B'], B: ['C'], C: ['B'], D: ['D'], E: [] }));
    expect(found).toEqual({ order: ['E'], circles: [['B', 'C'], ['D']] });
  });

  test('finds two rings that share a member as one', () => {
    expect(loadPath(members({ A: ['B', 'C'], B: ['A'], C: ['A'] })).circles).toEqual([
      ['A', 'B', 'C'],
    ]);
  });

  test('orders everything that no circle holds up, each after its needs', () => {
    const marks = ['A', 'B', 'C', 'D', 'E', 'F'];
    const graph = fc.record(
      Object.fromEntries(
        marks.map((mark) => [mark, fc.subarray(marks, { maxLength: 2 })]),
      ),
    );
    fc.assert(
      fc.property(graph, (carry) => {
        const { order, circles } = loadPath(members(carry));
        for (const [at, mark] of order.entries())
          for (const need of carry[mark] ?? [])
            expect(order.indexOf(need)).toBeLessThan(at);
        for (const circle of circles) expect(order).not.toContain(circle[0]);
        if (circles.length === 0) expect([...order].sort()).toEqual(marks);
        else expect(order.length).toBeLessThan(marks.length);
      }),
    );
  });

  test('through a folder: members on a circle are at fault, one that leans on it is not', () => {
    const carrying = (mark: string, of: string): string =>
      beamYaml({ mark, loads: `[ { reaction: ${of}, at: B } ]` });
    const { value, diagnostics } = readFolder({
      'members/b1.yaml': carrying('B1', 'B2.A'),
      'members/b2.yaml': carrying('B2', 'B3.A'),
      'members/b3.yaml': carrying('B3', 'B2.C'),
    });
    expect(value?.members.map((member) => member.mark)).toEqual(['B1']);
    expect(value?.faulty.map((member) => member.mark)).toEqual(['B2', 'B3']);
    expect(diagnostics.map((one) => [one.code, one.member, one.message])).toEqual([
      [
        'depends-on-unsolved',
        'B2',
        'the carried reactions run in a circle: B2 carries B3 carries B2',
      ],
      [
        'depends-on-unsolved',
        'B3',
        'the carried reactions run in a circle: B2 carries B3 carries B2',
      ],
    ]);
  });
});
