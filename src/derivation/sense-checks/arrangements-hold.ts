import {
  breakpointsOf,
  optionResults,
  rangeOfOptions,
  sizeOf,
  solveStates,
  valueAt,
  type Arrangement,
  type BeamResult,
  type BeamStructure,
  type OptionResults,
  type RangeResult,
} from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { componentEnds } from '../narrators/reaction-components.ts';
import { lengthText, valueText } from '../printing.ts';
import { agree, type CheckOutcome } from './check-outcome.ts';

/**
 * The bounds of one case found again in two ways: each extreme by standing the loads as its
 * arrangement says and solving that as one loading, and each reaction by adding to the fixed loads,
 * choice by choice, the option that gives most of it, and so at every break of the curves. Of a case with trains what its
 * choices give is checked, not what the trains add.
 */
export function arrangementsHold(
  context: MemberContext,
  range: RangeResult,
): readonly CheckOutcome[] {
  const { arranged } = context;
  const outcome = optionResults(arranged, solveStates);
  const options =
    outcome.kind === 'unsolved'
      ? undefined
      : outcome.cases.find(({ mark }) => mark === range.mark);
  if (options === undefined)
    return [{ holds: false, finding: 'its loads could not be taken apart' }];
  const hasTrains =
    arranged.trains?.some((train) => train.case === range.mark) === true;
  const claimed = hasTrains ? rangeOfOptions(options) : range;
  return [
    ...extremesStand(context, claimed),
    ...reactionsAreBounds(context, claimed, options),
    ...curvesAreBounds(context, claimed, options),
  ];
}

function extremesStand(
  { arranged, printing }: MemberContext,
  range: RangeResult,
): readonly CheckOutcome[] {
  const sought = (['shear', 'moment'] as const).flatMap((what) =>
    (['max', 'min'] as const).map((sense) => ({
      what,
      sense,
      ...range.extremes[what][sense],
    })),
  );
  const outcome = solveStates(
    stood(
      arranged,
      range.mark,
      sought.map(({ arrangement }) => arrangement),
    ),
  );
  if (outcome.kind === 'unsolved')
    return [{ holds: false, finding: 'an arrangement could not be solved' }];
  return sought.map(({ what, sense, value, x }, index) => {
    const result = outcome.results.find(({ mark }) => mark === standingMark(index));
    const found =
      result === undefined
        ? [NaN]
        : (['left', 'right'] as const).map((side) => valueAt(result[what], x, side));
    const scale = Math.max(sizeOf(range[what].max), sizeOf(range[what].min));
    const kind = what === 'moment' ? 'moment' : 'force';
    return {
      holds: found.some((one) => agree(one, value, scale)),
      finding: `the ${sense === 'max' ? 'greatest' : 'least'} ${what} is ${valueText(printing, kind, value)}, but its arrangement solved as one loading gives ${valueText(printing, kind, found[0] ?? 0)}`,
    };
  });
}

const standingMark = (index: number): string => `arrangement ${index}`;

/** The structure with each arrangement of one case as a case of its own, the fixed loads of the case in each. */
function stood(
  { choices = [], ...rest }: BeamStructure,
  mark: string,
  arrangements: readonly Arrangement[],
): BeamStructure {
  const marks = arrangements.map((_, index) => standingMark(index));
  const loads = arrangements.flatMap((arrangement, index) => {
    const chosen = arrangement.choices.flatMap(({ id, option }) => {
      const choice = choices.find((one) => one.id === id);
      return choice?.options.find(({ name }) => name === option)?.loads ?? [];
    });
    const fixed = rest.loads.filter((load) => load.case === mark);
    return [...fixed, ...chosen].map((load) => ({
      ...load,
      case: marks[index] ?? '',
      id: `${load.id} ${index}`,
    }));
  });
  const here = <T extends { readonly case: string }>(all: readonly T[]): T[] =>
    all.flatMap((one) =>
      one.case === mark ? marks.map((name) => ({ ...one, case: name })) : [],
    );
  return {
    ...rest,
    trains: [],
    loads,
    cases: marks,
    curvatures: here(rest.curvatures ?? []),
    supports: rest.supports.map((support) => ({
      ...support,
      restraints: support.restraints.map((restraint) =>
        restraint.kind === 'moment' || restraint.settlements === undefined
          ? restraint
          : { ...restraint, settlements: here(restraint.settlements) },
      ),
    })),
  };
}

function curvesAreBounds(
  { printing }: MemberContext,
  range: RangeResult,
  { fixed, choices }: OptionResults,
): readonly CheckOutcome[] {
  return (['shear', 'moment'] as const).flatMap((what) =>
    (['max', 'min'] as const).flatMap((sense) => {
      const curve = range[what][sense];
      const size = Math.max(sizeOf(range[what].max), sizeOf(range[what].min));
      const most = sense === 'max' ? Math.max : Math.min;
      return breakpointsOf(curve).flatMap((x) =>
        (['left', 'right'] as const).map((side): CheckOutcome => {
          const at = (result: BeamResult): number => valueAt(result[what], x, side);
          const total = choices.reduce(
            (sum, { options }) =>
              sum + most(...options.map(({ result }) => at(result))),
            at(fixed),
          );
          const claimed = valueAt(curve, x, side);
          const kind = what === 'moment' ? 'moment' : 'force';
          return {
            holds: agree(total, claimed, size),
            finding: `the ${sense === 'max' ? 'greatest' : 'least'} ${what} at ${lengthText(printing, x)} is ${valueText(printing, kind, claimed)}, but its spans add up to ${valueText(printing, kind, total)}`,
          };
        }),
      );
    }),
  );
}

function reactionsAreBounds(
  { structure, printing }: MemberContext,
  range: RangeResult,
  { fixed, choices }: OptionResults,
): readonly CheckOutcome[] {
  return structure.supports.flatMap(({ point }) =>
    (['x', 'y', 'moment'] as const).flatMap((kind) =>
      (['max', 'min'] as const).map((sense): CheckOutcome => {
        const component = { point, kind };
        const parts = choices.map(({ options }) => {
          const values = options.map(
            ({ result }) => componentEnds(result, component).max,
          );
          return sense === 'max' ? Math.max(...values) : Math.min(...values);
        });
        const all = [componentEnds(fixed, component).max, ...parts];
        const total = all.reduce((sum, part) => sum + part, 0);
        const scale = all.reduce((sum, part) => sum + Math.abs(part), 0);
        const claimed = componentEnds(range, component)[sense];
        const what = kind === 'moment' ? 'moment' : 'force';
        return {
          holds: agree(total, claimed, scale),
          finding: `the ${sense === 'max' ? 'greatest' : 'least'} reaction at ${point} is ${valueText(printing, what, claimed)}, but its spans add up to ${valueText(printing, what, total)}`,
        };
      }),
    ),
  );
}
