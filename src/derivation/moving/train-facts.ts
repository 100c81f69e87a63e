import {
  number,
  product,
  type Expression,
  type StatementLine,
} from '../../equation/index.ts';
import { name } from '../../equation/index.ts';
import type { BeamTrain } from '../../project/index.ts';
import type { GivenQuantity } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { asGiven, tidy } from '../printing.ts';
import type { AxleRow, MovingStep } from '../steps/moving-steps.ts';
import { axleSymbol, laneSymbol } from './moving-symbols.ts';

type TrainStep = Extract<MovingStep, { kind: 'train' }>;

/** What rolls: axles front first, their distances, lane load and factors. */
export function trainFacts(
  context: MemberContext,
  train: BeamTrain,
  which: number | undefined,
): TrainStep {
  const { factors, lane, spacings, travel, relieving } = train;
  const counted =
    lane &&
    factored(context, { what: 'force-per-length', of: lane, by: factors?.lane });
  return {
    kind: 'train',
    case: train.case,
    ...(which === undefined ? {} : { number: which }),
    axles: train.axles.map((axle, index) =>
      axleRow(
        axle,
        factored(context, { what: 'force', of: axle, by: factors?.axles }),
        {
          index,
          ...(spacings[index - 1] === undefined ? {} : { behind: spacings[index - 1] }),
        },
      ),
    ),
    travel: travel.value,
    relieving: relieving.value,
    taken: {
      travel: travel.origin === 'default',
      relieving: relieving.origin === 'default' && train.axles.length > 1,
    },
    ...(lane === undefined
      ? {}
      : {
          lane: { given: asGiven(lane), ...(counted === undefined ? {} : { counted }) },
        }),
    ...factorFacts(context, train),
    ...(train.note === undefined ? {} : { note: train.note }),
  };
}

/** A size with its factor; undefined where there is none. */
function factored(
  { printing }: MemberContext,
  {
    what,
    of,
    by,
  }: {
    readonly what: 'force' | 'force-per-length';
    readonly of: GivenQuantity;
    readonly by: number | undefined;
  },
): Expression | undefined {
  return by === undefined ? undefined : tidy(printing, what, of.si * by);
}

/** The factors with their reason, and the products. */
function factorFacts(
  context: MemberContext,
  { factors, axles, lane }: BeamTrain,
): Pick<TrainStep, 'factors'> {
  if (factors === undefined) return {};
  const { axles: onAxles, lane: onLane } = factors;
  const lines = [
    ...axles.flatMap((of, index) =>
      productLine(axleSymbol(index), of, {
        by: onAxles,
        result: factored(context, { what: 'force', of, by: onAxles }),
      }),
    ),
    ...(lane === undefined
      ? []
      : productLine(laneSymbol, lane, {
          by: onLane,
          result: factored(context, { what: 'force-per-length', of: lane, by: onLane }),
        })),
  ];
  return {
    factors: {
      ...(onAxles === undefined ? {} : { axles: number(onAxles) }),
      ...(onLane === undefined ? {} : { lane: number(onLane) }),
      because: factors.because,
      products: { lines },
    },
  };
}

function axleRow(
  axle: GivenQuantity,
  counted: Expression | undefined,
  {
    index,
    behind,
  }: {
    readonly index: number;
    readonly behind?: BeamTrain['spacings'][number] | undefined;
  },
): AxleRow {
  return {
    number: index + 1,
    given: asGiven(axle),
    ...(counted === undefined ? {} : { counted }),
    ...(behind === undefined ? {} : { behind: asGiven(behind.least) }),
    ...(behind === undefined || behind.greatest.si === behind.least.si
      ? {}
      : { behindAtMost: asGiven(behind.greatest) }),
  };
}

function productLine(
  symbol: ReturnType<typeof axleSymbol>,
  given: GivenQuantity,
  {
    by,
    result,
  }: { readonly by: number | undefined; readonly result: Expression | undefined },
): readonly StatementLine[] {
  if (by === undefined || result === undefined) return [];
  return [
    {
      left: name(symbol),
      chain: [
        { sign: '=', of: product(number(by), asGiven(given)) },
        { sign: '=', of: result },
      ],
    },
  ];
}
