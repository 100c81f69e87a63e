import { describe, expect, test } from 'vitest';
import { startProgress } from '../../src/cli/progress.ts';
import { keepingStreams } from '../support/command-line.ts';

describe('progress', () => {
  const watched = (
    about: { isTerminal: boolean; isQuiet?: boolean },
    times: readonly number[],
  ): string => {
    const clock = [...times];
    const { streams, err } = keepingStreams({
      isTerminal: about.isTerminal,
      now: () => clock.shift() ?? 0,
    });
    const progress = startProgress(streams, about.isQuiet === true);
    progress.onStage('composing');
    progress.onStage('layout');
    progress.end();
    return err();
  };

  test('names the stage that begins once a run takes its time, and takes the line away', () => {
    expect(watched({ isTerminal: true }, [0, 200, 900])).toBe(
      '\r\u001b[Ksumzero: laying out the pages …\r\u001b[K',
    );
  });

  test('says nothing of a run that is quick', () => {
    expect(watched({ isTerminal: true }, [0, 20, 90])).toBe('\r\u001b[K');
  });

  test('says nothing in a file or where it is asked to be quiet', () => {
    expect(watched({ isTerminal: false }, [0, 2000, 9000])).toBe('');
    expect(watched({ isTerminal: true, isQuiet: true }, [0, 2000, 9000])).toBe('');
  });
});
