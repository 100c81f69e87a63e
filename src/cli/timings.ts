import type { Stage } from '../index.ts';
import type { Streams } from './streams.ts';

/** How long each stage of a run took, in seconds. */
export interface Timings {
  readonly onStage: (stage: Stage) => void;
  /** A line a stage, `layout 1.234 s`, in order; `loading` is what came before the first. */
  readonly lines: () => string;
}

/** Times the stages of a run from the start of the program, or of a round where it has run before. */
export function startTimings({ now }: Streams, isFirst: boolean): Timings {
  const begun: { readonly stage: string; readonly at: number }[] = [
    { stage: 'loading', at: isFirst ? 0 : now() },
  ];
  return {
    onStage: (stage) => {
      begun.push({ stage, at: now() });
    },
    lines: () =>
      [...begun.slice(0, -1), { stage: 'in all', at: begun[0]?.at ?? 0 }]
        .map(({ stage, at }, index) => {
          const end = (stage === 'in all' ? undefined : begun[index + 1]?.at) ?? now();
          return `${stage} ${((end - at) / 1000).toFixed(3)} s\n`;
        })
        .join(''),
  };
}
