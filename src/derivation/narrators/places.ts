import type { BeamPlace } from '../../project/index.ts';
import { pointAt, type CaseContext, type MemberContext } from '../case-context.ts';
import { asGiven, tidy } from '../printing.ts';
import type { Place } from '../steps.ts';

/** A station as a place. */
export function placeAtStation(
  { structure, printing }: Pick<CaseContext, 'structure' | 'printing'>,
  x: number,
): Place {
  const point = pointAt(structure, x);
  return {
    station: tidy(printing, 'length', x),
    ...(point === undefined ? {} : { point }),
  };
}

/** A place of the file, its station as given where it is one. */
export function placeOf({ printing }: MemberContext, place: BeamPlace): Place {
  const station =
    place.given === undefined
      ? tidy(printing, 'length', place.x)
      : asGiven(place.given);
  return { station, ...(place.point === undefined ? {} : { point: place.point }) };
}
