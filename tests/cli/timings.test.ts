import { describe, expect, test } from 'vitest';
import { startTimings } from '../../src/cli/timings.ts';
import { keepingStreams } from '../support/command-line.ts';

describe('timings', () => {
  const timed = (isFirst: boolean, times: readonly number[]): string => {
    const clock = [...times];
    const { streams } = keepingStreams({ now: () => clock.shift() ?? 0 });
    const timings = startTimings(streams, isFirst);
    timings.onStage('reading');
    timings.onStage('working');
    timings.onStage('done');
    return timings.lines();
  };

  test('give each stage its time, from the start of the program on', () => {
    expect(timed(true, [400, 450, 1450, 1500])).toBe(
      'loading 0.400 s\nreading 0.050 s\nworking 1.000 s\nin all 1.500 s\n',
    );
  });

  test('begin anew in a later round', () => {
    expect(timed(false, [5000, 5100, 5200, 5300, 5400])).toBe(
      'loading 0.100 s\nreading 0.100 s\nworking 0.100 s\nin all 0.400 s\n',
    );
  });
});
