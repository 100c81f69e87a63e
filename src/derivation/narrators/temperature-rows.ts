import { number } from '../../equation/index.ts';
import type { BeamTemperature } from '../../project/index.ts';
import type { MemberContext } from '../case-context.ts';
import { asGiven } from '../printing.ts';
import type { GivenStep, TemperatureRow } from '../steps.ts';
import { placeOf } from './places.ts';

/** The temperature differences of the given list; nothing where there are none. */
export function temperatureFacts(context: MemberContext): readonly GivenStep[] {
  const { temperatures } = context.definition;
  if (temperatures.length === 0) return [];
  return [
    { kind: 'temperatures', rows: temperatures.map((one) => rowOf(context, one)) },
  ];
}

function rowOf(
  context: MemberContext,
  { factor, note, ...of }: BeamTemperature,
): TemperatureRow {
  return {
    case: of.case,
    difference: asGiven(of.difference),
    depth: asGiven(of.depth),
    expansion: asGiven(of.expansion),
    taken: of.taken,
    from: placeOf(context, of.start),
    to: placeOf(context, of.end),
    uses: of.uses,
    ...(note === undefined ? {} : { note }),
    ...(factor === undefined
      ? {}
      : { factor: { times: number(factor.factor), because: factor.because } }),
  };
}
