import type { RangeResult } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { envelopeFigure } from '../pictures/diagram-figures.ts';
import { value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { ChoiceRow, RangeStep } from '../steps/range-steps.ts';
import { arrangementFigure } from './arrangement-figures.ts';
import { arrangementText, type ChoiceName } from './choice-names.ts';
import { optionTables } from './option-table.ts';
import { takeApart, type NumberedChoice, type TakenApart } from './option-values.ts';
import { mostChoicesInFull, quantitiesOf, type Quantity } from './quantities.ts';
import { rangeSums } from './range-sums.ts';

/**
 * How a case whose loads may stand in several ways comes to its greatest and least: what may stand,
 * each of it worked alone, the sums by superposition, and the arrangements that govern, drawn. Trains of the case are left to their own section.
 */
export function narrateArrangements(context: CaseContext): readonly Step[] {
  const apart = takeApart(context, context.mark);
  const { range } = apart;
  const isFull = apart.choices.length <= mostChoicesInFull;
  const quantities = quantitiesOf(context, range, isFull);
  const groups = (['moments', 'shears', 'reactions'] as const)
    .map((group) => quantities.filter((one) => one.group === group))
    .filter((group) => group.length > 0);
  return [
    choicesStep(context, apart, !isFull),
    ...groups.flatMap((group) => worked(context, apart, group)),
    ...governing(context, range),
  ];
}

/** Before a case without a single state is worked: that it is worked as it is placed, and what follows. */
export function narrateStated({ choiceNames, mark }: CaseContext): RangeStep {
  const own = [...choiceNames.values()].filter((name) => name.case === mark);
  return {
    kind: 'stated',
    case: mark,
    spans: own.some(({ kind }) => kind === 'span'),
    carried: own.some(({ kind }) => kind === 'carried'),
  };
}

function choicesStep(
  context: CaseContext,
  { choices }: TakenApart,
  isShortened: boolean,
): RangeStep {
  const { arranged, mark, method } = context;
  const of = (kind: 'span' | 'carried'): boolean =>
    choices.some(({ name }) => name.kind === kind);
  const settles = arranged.supports.some(({ restraints }) =>
    restraints.some(
      (one) => one.kind === 'force' && one.settlements?.some((s) => s.case === mark),
    ),
  );
  return {
    kind: 'choices',
    case: mark,
    rows: choices.map((choice) => choiceRow(context, choice)),
    hasFixed:
      settles ||
      arranged.loads.some((load) => load.case === mark) ||
      (arranged.curvatures ?? []).some((one) => one.case === mark),
    hasSpans: of('span'),
    hasCarried: of('carried'),
    method: method?.method ?? 'statics',
    hasTrains: (arranged.trains ?? []).some((train) => train.case === mark),
    isShortened,
  };
}

function choiceRow(
  { structure, symbols }: CaseContext,
  { name, text, choice, options }: NumberedChoice,
): ChoiceRow {
  const ids = choice.options.flatMap(({ loads }) => loads.map(({ id }) => id));
  const held = structure.loads.filter((load) =>
    ids.some((id) => id === load.id || id.startsWith(`${load.id}:`)),
  );
  return {
    numbers: options.flatMap(({ number }) => number ?? []),
    ...kindOf(structure, name),
    text,
    loads: held.map((load) =>
      load.kind === 'distributed' ? symbols.intensity(load.id) : symbols.load(load.id),
    ),
  };
}

function kindOf(
  structure: CaseContext['structure'],
  name: ChoiceName,
): Pick<ChoiceRow, 'kind' | 'isOverhang'> {
  if (name.kind === 'carried') return { kind: 'carried', isOverhang: false };
  const { from, to } = name;
  if (from === to) return { kind: 'support', isOverhang: false };
  return {
    kind: 'span',
    isOverhang: !isHeld(structure, from) || !isHeld(structure, to),
  };
}

function isHeld({ supports }: CaseContext['structure'], point: string): boolean {
  return supports.some(
    (support) =>
      support.point === point &&
      support.restraints.some((one) => one.kind === 'force' && one.direction[1] !== 0),
  );
}

/** A table of a group, and the sums of its columns. */
function worked(
  context: CaseContext,
  apart: TakenApart,
  group: readonly Quantity[],
): readonly RangeStep[] {
  return [...optionTables(context, apart, group), rangeSums(context, apart, group)];
}

/** The arrangements that give the extremes, each drawn once, and the envelope of them all. */
function governing(context: CaseContext, range: RangeResult): readonly Step[] {
  const { moment, shear } = range.extremes;
  const all = [
    { what: 'moment-max', ...moment.max },
    { what: 'moment-min', ...moment.min },
    { what: 'shear-max', ...shear.max },
    { what: 'shear-min', ...shear.min },
  ] as const;
  const felt = all
    .filter(({ value: si }) => si !== 0)
    .map((extreme) => ({
      ...extreme,
      text: arrangementText(context.choiceNames, extreme.arrangement),
    }));
  if (felt.length === 0) return [];
  const distinct = felt.filter(
    ({ text }, index) => felt.findIndex((other) => other.text === text) === index,
  );
  return [
    {
      kind: 'arrangement',
      case: range.mark,
      extremes: felt.map(({ what, value: si, x, text }) => ({
        what,
        value: value(
          context.printing,
          what.startsWith('moment') ? 'moment' : 'force',
          si,
        ),
        at: placeAtStation(context, x),
        arrangement: text,
      })),
    },
    ...distinct.map(({ arrangement, text }): Step => ({
      kind: 'figure',
      shows: 'arrangement',
      case: range.mark,
      arrangement: text,
      gives: felt.filter((one) => one.text === text).map(({ what }) => what),
      figure: arrangementFigure(context, range.mark, arrangement),
    })),
    {
      kind: 'figure',
      shows: 'range',
      case: range.mark,
      figure: envelopeFigure(context, [range]),
    },
  ];
}
