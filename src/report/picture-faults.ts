import type { Diagnostic } from '../diagnostics/index.ts';
import type { Project } from '../project/index.ts';
import type { Block, Report } from './blocks.ts';

/** The pictures that a report places, by their path in the project folder, each once. */
function picturesIn(report: Report): readonly string[] {
  const sources = report.parts.flatMap(({ blocks }) => blocks.flatMap(sourcesOf));
  return [...new Set(sources)];
}

function sourcesOf(block: Block): readonly string[] {
  if (block.kind === 'image') return [block.source];
  if (block.kind === 'group') return block.blocks.flatMap(sourcesOf);
  return block.kind === 'list' ? block.items.flat().flatMap(sourcesOf) : [];
}

/** Pictures that the package places and that no PDF can hold, each as an error. */
export function pictureFaults(
  report: Report,
  { images }: Project,
  problemOf: (bytes: Uint8Array) => string | undefined,
): readonly Diagnostic[] {
  return picturesIn(report).flatMap((source): readonly Diagnostic[] => {
    const bytes = images[source];
    const problem = bytes === undefined ? undefined : problemOf(bytes);
    if (problem === undefined) return [];
    const hints = ['save it anew as PNG, or as JPEG in RGB colours or greys'];
    return [
      {
        severity: 'error',
        code: 'not-a-picture',
        message: `${source} ${problem}`,
        hints,
      },
    ];
  });
}
