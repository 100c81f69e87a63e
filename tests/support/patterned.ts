import type {
  BeamResult,
  BeamStructure,
  Load,
  LoadChoice,
} from '../../src/statics/index.ts';
import { solveBeam } from '../../src/statics/index.ts';

/** Spans and overhangs: the stretches between neighbouring supports and ends. */
export function stretchesOf({
  points,
  supports,
}: BeamStructure): readonly (readonly [number, number])[] {
  const cuts = [points[0]!.x, ...supports.map(({ x }) => x), points.at(-1)!.x];
  const sorted = [...new Set(cuts)].sort((a, b) => a - b);
  return sorted.slice(1).map((to, index) => [sorted[index]!, to] as const);
}

/** The structure with the loads of one case made into a choice a stretch: off, or on. */
export function patterned(structure: BeamStructure, mark: string): BeamStructure {
  const stretches = stretchesOf(structure);
  const choices = stretches.map(([from, to], index): LoadChoice => {
    const loads = structure.loads
      .filter((load) => load.case === mark)
      .flatMap((load) => cutTo(load, [from, to], index === stretches.length - 1))
      .map((load) => ({ ...load, id: `${load.id}/${index + 1}` }));
    return {
      id: `${mark}:${index + 1}`,
      case: mark,
      span: { from, to },
      options: [
        { name: 'off', loads: [] },
        { name: 'on', loads },
      ],
    };
  });
  return {
    ...structure,
    loads: structure.loads.filter((load) => load.case !== mark),
    choices: choices.filter(({ options }) => options[1]!.loads.length > 0),
  };
}

function cutTo(
  load: Load,
  [from, to]: readonly [number, number],
  isLast: boolean,
): readonly Load[] {
  if (load.kind !== 'distributed') {
    return load.x >= from && (load.x < to || (isLast && load.x === to)) ? [load] : [];
  }
  const [start, end] = [Math.max(load.from, from), Math.min(load.to, to)];
  if (!(end > start)) return [];
  const at = (x: number, a: number, b: number): number =>
    a + ((b - a) * (x - load.from)) / (load.to - load.from);
  const { x1, x2, y1, y2 } = load;
  return [
    {
      ...load,
      from: start,
      to: end,
      x1: at(start, x1, x2),
      y1: at(start, y1, y2),
      x2: at(end, x1, x2),
      y2: at(end, y1, y2),
    },
  ];
}

/** Every arrangement of the choices of one case solved as plain loads: two to the power of the spans, or whatever the options make. */
export function everyArrangement(
  structure: BeamStructure,
  mark: string,
): readonly BeamResult[] {
  const { choices = [], ...rest } = structure;
  const mine = choices.filter((choice) => choice.case === mark);
  const arrangements = mine.reduce<readonly (readonly Load[])[]>(
    (all, { options }) =>
      all.flatMap((before) => options.map(({ loads }) => [...before, ...loads])),
    [[]],
  );
  return arrangements.map((loads) => {
    const outcome = solveBeam({ ...rest, loads: [...rest.loads, ...loads] });
    if (outcome.kind === 'unsolved') throw new Error(outcome.unsolved.reason);
    return outcome.results.find((result) => result.mark === mark)!;
  });
}
