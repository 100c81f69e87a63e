import type { Stage } from '../index.ts';
import { printable } from './paint.ts';
import type { Streams } from './streams.ts';

const words: Readonly<Record<Stage, string>> = {
  reading: 'reading the folder',
  working: 'working the members',
  composing: 'composing the sheets',
  layout: 'laying out the pages',
  writing: 'writing the PDF',
  done: '',
};

/**
 * A stage cannot be interrupted to say how far it is, so that whoever waits is told when one begins.
 * What took so many milliseconds to come to a stage takes more than a second in all: the stages that
 * come last take longest.
 */
const patience = 300;

const eraseLine = '\r\u001b[K';

/** One line on the terminal that says what is being done, for runs that take more than a second. */
export interface Progress {
  readonly onStage: (stage: Stage) => void;
  /** The same for what is no stage of the binding. Words from a file's name are shown as they can be printed. */
  readonly onWords: (words: string) => void;
  /** Takes the line away. */
  readonly end: () => void;
}

/** Starts to watch a run. Nothing is written unless the error stream is a terminal. */
export function startProgress(
  { err, isTerminal, now }: Streams,
  isQuiet: boolean,
): Progress {
  const isShown = isTerminal && !isQuiet;
  const start = now();
  const tell = (doing: string): void => {
    if (isShown && now() - start > patience)
      err(doing === '' ? eraseLine : `${eraseLine}sumzero: ${printable(doing)} …`);
  };
  return {
    onStage: (stage) => tell(words[stage]),
    onWords: tell,
    end: () => {
      if (isShown) err(eraseLine);
    },
  };
}
