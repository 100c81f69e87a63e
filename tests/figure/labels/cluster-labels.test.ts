import { describe, expect, test } from 'vitest';
import { clusterLabels } from '../../../src/figure/labels/cluster-labels.ts';
import type { Anchored } from '../../../src/figure/labels/cluster-labels.ts';

const label = (x: number, width: number): Anchored => ({
  anchor: { x, y: 0 },
  size: { width, height: 8 },
});
const bounds = { left: 0, right: 400 };

describe('clusterLabels', () => {
  test('labels with room stand straight over their points, each a cluster of its own', () => {
    const clusters = clusterLabels([label(300, 40), label(100, 40)], bounds);
    expect(clusters.map(({ kind }) => kind)).toEqual(['over', 'over']);
    expect(clusters.map(({ seats }) => seats[0]!.left)).toEqual([80, 280]);
  });

  test('two that are near stand side by side, each still over its own point', () => {
    const [cluster, ...more] = clusterLabels([label(100, 40), label(120, 40)], bounds);
    expect(more).toEqual([]);
    expect(cluster!.kind).toBe('over');
    const [first, second] = cluster!.seats;
    expect(first!.left + 40).toBeLessThanOrEqual(second!.left);
    expect(first!.left + 40).toBeGreaterThan(100);
    expect(second!.left).toBeLessThan(120);
  });

  test('many that crowd are fanned out in columns, leaders in the order of the points', () => {
    const crowd = Array.from({ length: 12 }, (_, index) => label(100 + 8 * index, 40));
    const [cluster, ...more] = clusterLabels(crowd, bounds);
    expect(more).toEqual([]);
    expect(cluster!.kind).toBe('fan');
    const lanes = cluster!.seats.map(({ lane }) => lane);
    expect(lanes).toEqual([...lanes].sort((a, b) => a - b));
    // Within a column a leader to a farther row rises left of the nearer labels.
    for (const [index, seat] of cluster!.seats.entries()) {
      const next = cluster!.seats[index + 1];
      if (next !== undefined && next.row < seat.row)
        expect(seat.lane).toBeLessThan(next.left);
    }
  });

  test('stays within its bounds, however many there are', () => {
    const crowd = Array.from({ length: 40 }, (_, index) => label(10 * index, 55));
    for (const cluster of clusterLabels(crowd, bounds)) {
      expect(cluster.left).toBeGreaterThanOrEqual(0);
      expect(cluster.right).toBeLessThanOrEqual(400);
      for (const { left, size } of cluster.seats) {
        expect(left).toBeGreaterThanOrEqual(0);
        expect(left + size.width).toBeLessThanOrEqual(400);
      }
    }
  });

  test('a label at the edge is pushed inside while it still reaches its point', () => {
    const [cluster] = clusterLabels([label(5, 40)], bounds);
    expect(cluster).toMatchObject({ kind: 'over', left: 0 });
  });
});
