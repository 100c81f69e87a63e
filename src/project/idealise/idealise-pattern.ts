import type { Load, LoadChoice } from '../../statics/index.ts';
import { clipLoad } from './clip-load.ts';
import type { BeamSpan } from './spans-of.ts';

/**
 * The loads of one case that may stand on some spans and not on others: one choice a span or overhang that
 * carries any of them, off or on. Distributed loads are cut at supports. What stands exactly at a
 * support belongs to no span: it is a choice of its own, since it may lighten what has to pull.
 * A beam of one span has no choices: all its loads stand together.
 */
export function idealisePattern(
  mark: string,
  loads: readonly Load[],
  spans: readonly BeamSpan[],
): readonly LoadChoice[] {
  const own = loads.filter((load) => load.case === mark);
  if (spans.length < 2 || own.length === 0) return [];
  const inner = spans
    .slice(1)
    .map(({ from, start }) => ({ from, to: from, start, end: start }));
  return [...spans, ...inner]
    .sort((one, other) => one.from - other.from || one.to - other.to)
    .flatMap((place): readonly LoadChoice[] => {
      const on = own.flatMap((load) => partWithin(load, place, inner) ?? []);
      return on.length === 0 ? [] : [choiceOf(mark, place, on)];
    });
}

function choiceOf(mark: string, place: BeamSpan, on: readonly Load[]): LoadChoice {
  return {
    id: `${mark}:${nameOf(place)}`,
    case: mark,
    span: { from: place.from, to: place.to },
    options: [
      { name: 'off', loads: [] },
      { name: 'on', loads: on },
    ],
  };
}

function partWithin(
  load: Load,
  place: BeamSpan,
  inner: readonly BeamSpan[],
): Load | undefined {
  if (load.kind === 'distributed') {
    const part = clipLoad(load, place);
    return part === undefined || part === load
      ? part
      : { ...part, id: `${load.id}:${nameOf(place)}` };
  }
  const atSupport = inner.some(({ from }) => from === load.x);
  if (place.from === place.to) return load.x === place.from ? load : undefined;
  return !atSupport && place.from <= load.x && load.x <= place.to ? load : undefined;
}

const nameOf = ({ start, end }: BeamSpan): string =>
  start === end ? start : `${start} ${end}`;
