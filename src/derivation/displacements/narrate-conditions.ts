import {
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type StatementLine,
  type Term,
} from '../../equation/index.ts';
import { pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { narrateSystem } from '../linear-system/narrate-system.ts';
import type { DisplacementStep, Step } from '../steps.ts';
import { sideOf, timesOf } from './condition-side.ts';
import { bendingFigure, unitOfTimes } from './bending-units.ts';
import { constantFigure, constantSymbol, unitOfConstant } from './constants.ts';
import { tidyIn } from './exact-figure.ts';
import {
  type ConditionRow,
  type Integration,
  type IntegrationUnknown,
} from './integrate-bending.ts';
import { movementStatement, whyOf } from './movement-statement.ts';
import { reach, termsAtStation } from './write-terms.ts';

/**
 * The constants from the supports: conditions in an order in which each leaves one constant open, as far as
 * there is one; those that do not are solved together.
 */
export function narrateConditions(
  context: CaseContext,
  integration: Integration,
): readonly Step[] {
  const open = new Set(integration.unknowns.map((_, index) => index));
  const left = [...integration.rows];
  const steps: Step[] = [];
  for (;;) {
    const next = left.findIndex((row) => openIn(row, open).length === 1);
    const row = left[next];
    if (row === undefined) break;
    const [index = 0] = openIn(row, open);
    left.splice(next, 1);
    steps.push(conditionStep(context, integration, row, { open, index }));
    open.delete(index);
  }
  return left.length === 0
    ? steps
    : [...steps, ...together(context, integration, left, open)];
}

function openIn(
  { factors }: ConditionRow,
  open: ReadonlySet<number>,
): readonly number[] {
  return factors.flatMap((factor, index) =>
    factor !== 0 && open.has(index) ? [index] : [],
  );
}

function conditionStep(
  context: CaseContext,
  integration: Integration,
  row: ConditionRow,
  solving?: { readonly open: ReadonlySet<number>; readonly index: number },
): DisplacementStep {
  const { condition } = row;
  const movement = movementStatement(context, integration.bending, condition);
  const terms = termsStatement(context, integration, row);
  return {
    kind: 'condition',
    what: condition.what,
    point: condition.point,
    why: whyOf(condition),
    ...(movement === undefined ? {} : { movement }),
    ...(terms === undefined ? {} : { terms }),
    equation: equationOf(context, integration, row),
    ...(solving === undefined || isFoundAlready(row, integration)
      ? {}
      : { found: foundOf(context, integration, row, solving.index) }),
  };
}

/** True where the equation itself reads `c_2 = 0`. */
function isFoundAlready(row: ConditionRow, { unknowns }: Integration): boolean {
  const held = row.factors.flatMap((factor, i) =>
    factor === 0 ? [] : [{ factor, i }],
  );
  const [only] = held;
  if (row.terms !== 0 || held.length !== 1 || only?.factor !== 1) return false;
  return row.condition.what === 'slope' || unknowns[only.i]?.kind === 'deflection';
}

/** The terms at the condition's station, summed; nothing where one figure alone stands there or none. */
function termsStatement(
  context: CaseContext,
  { bending }: Integration,
  row: ConditionRow,
): Statement | undefined {
  const times = timesOf(row);
  const terms = termsAtStation(context, bending.terms, { x: row.condition.x, times });
  if (terms.length === 0) return undefined;
  return {
    lines: [
      {
        left: sum(...terms),
        chain: [{ sign: '=', of: bendingFigure(context.printing, times, row.terms) }],
      },
    ],
  };
}

/** `4567 kip·ft³ + c_1 (21 ft) + c_2 = 0`. */
function equationOf(
  context: CaseContext,
  integration: Integration,
  row: ConditionRow,
): Statement {
  const { printing } = context;
  const times = timesOf(row);
  const terms: readonly Term[] = [
    ...(row.terms === 0
      ? []
      : [signed(row.terms, (si) => bendingFigure(printing, times, si))]),
    ...row.factors.flatMap((factor, index): readonly Term[] => {
      const unknown = integration.unknowns[index];
      if (factor === 0 || unknown === undefined) return [];
      return [
        {
          sign: 1,
          of: withFactor(
            context,
            { integration, row, unknown, factor },
            name(constantSymbol(unknown)),
          ),
        },
      ];
    }),
  ];
  return {
    lines: [
      {
        left: sum(...terms),
        chain: [{ sign: '=', of: sideOf(context, integration, row) }],
        recheck: 'none',
        ...(isFoundAlready(row, integration) ? { boxed: true } : {}),
      },
    ],
  };
}

interface Factor {
  readonly integration: Integration;
  readonly row: ConditionRow;
  readonly unknown: IntegrationUnknown;
  readonly factor: number;
}

/** An unknown, or its value, times what stands before it in a condition. */
function withFactor(
  context: CaseContext,
  { integration, row, unknown, factor }: Factor,
  of: Expression,
): Expression {
  const before = factorExpression(context, { integration, row, unknown, factor });
  return before === undefined ? of : product(of, before);
}

function factorExpression(
  context: CaseContext,
  { integration, row, unknown, factor }: Factor,
): Expression | undefined {
  if (unknown.kind === 'slide') return tidyIn(context.printing, pureUnit, factor);
  if (factor === 1 && (row.condition.what === 'slope' || unknown.kind === 'deflection'))
    return undefined;
  const from = unknown.kind === 'hinge' ? unknown.x : integration.origin;
  return reach(context, row.condition.x, from);
}

function signed(si: number, figure: (size: number) => Expression): Term {
  return { sign: si < 0 ? -1 : 1, of: figure(Math.abs(si)) };
}

/** The one constant that a condition leaves open, the others put in. */
function foundOf(
  context: CaseContext,
  integration: Integration,
  row: ConditionRow,
  index: number,
): Statement {
  const { printing } = context;
  const times = timesOf(row);
  const figure = (si: number): Expression => bendingFigure(printing, times, si);
  const moved = integration.bending.EI * row.condition.movement;
  const unknown = integration.unknowns[index];
  if (unknown === undefined) throw new RangeError('no such constant');
  const others = row.factors.flatMap((factor, i): readonly Term[] => {
    const other = integration.unknowns[i];
    const value = integration.values[i] ?? 0;
    if (i === index || factor === 0 || value === 0 || other === undefined) return [];
    const of = constantFigure(printing, other, Math.abs(value));
    return [
      {
        sign: value < 0 ? 1 : -1,
        of: withFactor(context, { integration, row, unknown: other, factor }, of),
      },
    ];
  });
  const over: readonly Term[] = [
    ...(moved === 0 ? [] : [signed(moved, figure)]),
    ...(row.terms === 0 ? [] : [signed(-row.terms, figure)]),
    ...others,
  ];
  const found = constantFigure(printing, unknown, integration.values[index] ?? 0);
  const left = name(constantSymbol(unknown));
  const factor = row.factors[index] ?? 1;
  const before = factorExpression(context, { integration, row, unknown, factor });
  if (over.length === 0 || (over.length === 1 && before === undefined))
    return {
      lines: [
        { left, chain: [{ sign: '=', of: found }], boxed: true, recheck: 'none' },
      ],
    };
  const worked = before === undefined ? sum(...over) : quotient(sum(...over), before);
  const line: StatementLine = { left, chain: [{ sign: '=', of: worked }] };
  return { lines: [line, { chain: [{ sign: '=', of: found }], boxed: true }] };
}

/** Conditions that leave several constants open: written out, and solved as one system. */
function together(
  context: CaseContext,
  integration: Integration,
  rows: readonly ConditionRow[],
  open: ReadonlySet<number>,
): readonly Step[] {
  const { printing } = context;
  const indices = [...open];
  return [
    ...rows.map((row) => conditionStep(context, integration, row)),
    narrateSystem({
      figures: printing.figures,
      unknowns: indices.flatMap((index) => {
        const unknown = integration.unknowns[index];
        if (unknown === undefined) return [];
        return [
          {
            of: name(constantSymbol(unknown)),
            unit: unitOfConstant(printing, unknown),
            value: integration.values[index] ?? 0,
          },
        ];
      }),
      rows: rows.map((row, place) => ({
        number: place + 1,
        factors: indices.map((index) => row.factors[index] ?? 0),
        known: row.factors.reduce(
          (all, factor, i) =>
            open.has(i) ? all : all - factor * (integration.values[i] ?? 0),
          row.known,
        ),
        unit: unitOfTimes(printing, timesOf(row)),
      })),
    }),
  ];
}
