import type { BeamTrain } from '../../project/index.ts';
import type { MemberContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { tidy } from '../printing.ts';
import type { LoadRow } from '../steps.ts';

/** The train that a load stands for, and which of its axles; none where it is its lane load. */
export interface StandingPart {
  readonly train: BeamTrain;
  /** From 0, front first. */
  readonly axle?: number;
}

/** What a load stands for that is an axle or a lane load; undefined for all others. */
export function standingPart(
  { definition }: Pick<MemberContext, 'definition'>,
  id: string,
): StandingPart | undefined {
  const train = definition.trains.find((one) => id.startsWith(`${one.id} `));
  if (train === undefined) return undefined;
  const rest = id.slice(train.id.length + 1);
  return rest.startsWith('lane') ? { train } : { train, axle: Number(rest) - 1 };
}

/** An axle or a lane load as the given list shows it: where the sheet works it. */
export function standingRow(context: MemberContext, id: string): LoadRow | undefined {
  const part = standingPart(context, id);
  const load = context.structure.loads.find((one) => one.id === id);
  if (part === undefined || load === undefined || load.kind === 'couple')
    return undefined;
  const { printing, symbols } = context;
  const what = part.axle === undefined ? 'lane load' : `axle ${part.axle + 1}`;
  const common = {
    case: load.case,
    direction: 'down',
    uses: part.train.uses,
    note: `${what}, rolling; here where the train bends the member most`,
  };
  if (load.kind === 'point')
    return {
      ...common,
      symbol: symbols.load(id),
      kind: 'force',
      sizes: [tidy(printing, 'force', -load.fy)],
      at: placeAtStation(context, load.x),
    };
  return {
    ...common,
    symbol: symbols.intensity(id),
    kind: 'uniform',
    sizes: [tidy(printing, 'force-per-length', -load.y1)],
    from: placeAtStation(context, load.from),
    to: placeAtStation(context, load.to),
  };
}
