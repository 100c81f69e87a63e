import { number } from '../../equation/index.ts';
import type { BeamLoad, CarriedReaction } from '../../project/index.ts';
import type { MemberContext } from '../case-context.ts';
import { wordOf } from '../direction.ts';
import { asGiven } from '../printing.ts';
import type { LoadRow } from '../steps.ts';
import { standingRow } from '../moving/standing-row.ts';
import { carriedRow } from './carried-row.ts';
import { factored, originOf, projectedFact, sizeAsPrinted } from './load-origins.ts';
import { placeOf } from './places.ts';

/** A load as the given list shows it, with where it comes from. */
export function loadRow(
  context: MemberContext,
  id: string,
  carried: ReadonlyMap<string, CarriedReaction>,
): LoadRow {
  const defined = context.defined.get(id);
  if (defined === undefined)
    return standingRow(context, id) ?? carriedRow(context, id, carried.get(id));
  const symbol =
    defined.kind === 'distributed'
      ? context.symbols.intensity(id)
      : context.symbols.load(id);
  const origin = originOf(context, defined, symbol);
  const projected = projectedFact(context, defined, symbol);
  return {
    symbol,
    case: defined.case,
    ...placed(context, defined),
    ...(defined.note === undefined ? {} : { note: defined.note }),
    uses: defined.uses,
    ...(origin === undefined ? {} : { origin }),
    ...(projected === undefined ? {} : { projected }),
    ...(defined.factor === undefined
      ? {}
      : {
          factor: {
            times: number(defined.factor.factor),
            because: defined.factor.because,
            product: factored(context, defined, symbol),
          },
        }),
  };
}

/** What kind of load it is, how great, where and which way. */
function placed(
  context: MemberContext,
  load: BeamLoad,
): Pick<LoadRow, 'kind' | 'sizes' | 'at' | 'from' | 'to' | 'direction'> {
  switch (load.kind) {
    case 'point':
      return {
        kind: 'force',
        sizes: [asGiven(load.size)],
        at: placeOf(context, load.at),
        direction: directionText(load.direction),
      };
    case 'couple':
      return {
        kind: 'couple',
        sizes: [asGiven(load.size)],
        at: placeOf(context, load.at),
        direction: load.turn,
      };
    case 'distributed': {
      const [start, end] = load.sizes;
      const isUniform = start.si === end.si;
      return {
        kind: isUniform ? 'uniform' : 'varying',
        sizes: (isUniform ? [start] : [start, end]).map((size) =>
          sizeAsPrinted(context, load, size),
        ),
        from: placeOf(context, load.start),
        to: placeOf(context, load.end),
        direction: directionText(load.direction),
      };
    }
  }
}

function directionText({
  degrees,
  text,
}: {
  readonly degrees: number;
  readonly text?: string;
}): string {
  return wordOf(degrees) ?? `toward ${text?.replace(/ ?deg$/, '°') ?? `${degrees}°`}`;
}
