import {
  exactly,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { ForceMethod } from '../../statics/index.ts';
import { pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { narrateSystem } from '../linear-system/narrate-system.ts';
import type { LinearSystem } from '../linear-system/system.ts';
import type { Step } from '../steps.ts';
import type { ForceStep } from '../steps/redundant-steps.ts';
import { movementSymbol, unitOfMovement } from './movement-symbols.ts';
import { footFigure, stiffnessFigure } from './support-shares.ts';
import { unitOfRedundant } from './narrate-released.ts';
import { referenceRigidity, rigidityFigure } from './rigidity.ts';

/** The equations of compatibility, one a release, and their solution. */
export function narrateCompatibility(
  context: CaseContext,
  work: ForceMethod,
): readonly Step[] {
  return [
    {
      kind: 'compatibility',
      equations: work.releases.map((release, index) => ({
        release: context.symbols.unknown(release.unknown),
        allows: allowanceOf(work, index),
        statement: equationOf(context, work, index),
      })),
    },
    narrateSystem(systemOf(context, work)),
  ];
}

type Allows = Extract<
  ForceStep,
  { kind: 'compatibility' }
>['equations'][number]['allows'];

function allowanceOf({ allowed }: ForceMethod, index: number): Allows {
  const { give = 0, moved = 0 } = allowed[index] ?? {};
  if (give !== 0) return moved === 0 ? 'spring' : 'both';
  return moved === 0 ? 'nothing' : 'foot';
}

/** `E I δ₁₀ + E I δ₁₁ R_B = −E I (Δ_B + R_B / k_B)`; the right side 0 where the release allows nothing. */
function equationOf(context: CaseContext, work: ForceMethod, index: number): Statement {
  const EI = referenceRigidity(context);
  const release = work.releases[index];
  if (release === undefined) throw new RangeError('no such release');
  const unknown = name(context.symbols.unknown(release.unknown));
  const { give = 0, moved = 0 } = work.allowed[index] ?? {};
  const what = release.restraint.kind;
  const left = sum(
    product(EI, name(movementSymbol(index + 1, 0))),
    ...work.releases.map((other, k) =>
      product(
        EI,
        name(movementSymbol(Math.min(index, k) + 1, Math.max(index, k) + 1)),
        name(context.symbols.unknown(other.unknown)),
      ),
    ),
  );
  const point = release.unknown.point;
  const [foot, spring] = [footSymbol(point, what), springSymbol(point, what)];
  const terms = (symbolic: boolean): readonly Expression[] => [
    ...(moved === 0
      ? []
      : [symbolic ? name(foot) : footFigure(context, moved / work.EI, what)]),
    ...(give === 0
      ? []
      : [
          quotient(
            unknown,
            symbolic
              ? name(spring)
              : stiffnessFigure(context, release.restraint.stiffness ?? 0, what),
          ),
        ]),
  ];
  const right = (of: Expression, within: readonly Expression[]): Expression => {
    const term: Term = { sign: -1, of: product(of, sum(...within)) };
    return sum(term);
  };
  if (terms(true).length === 0)
    return {
      lines: [
        { left, chain: [{ sign: '=', of: exactly(0, pureUnit) }], recheck: 'none' },
      ],
    };
  return {
    lines: [
      { left, chain: [{ sign: '=', of: right(EI, terms(true)) }], recheck: 'none' },
      {
        chain: [
          { sign: '=', of: right(rigidityFigure(context, work.EI), terms(false)) },
        ],
        recheck: 'none',
      },
    ],
  };
}

/** How far the foot of a support moves against its reaction. */
export function footSymbol(point: string, what: 'force' | 'moment'): Symbol {
  return what === 'force'
    ? {
        letter: 'Δ',
        subscript: point,
        meaning: `movement of the support at ${point} against its reaction`,
      }
    : {
        letter: 'φ',
        subscript: point,
        meaning: `turn of the support at ${point} against its moment`,
      };
}

/** The stiffness of the spring at a support. */
export function springSymbol(point: string, what: 'force' | 'moment'): Symbol {
  return {
    letter: 'k',
    subscript: what === 'force' ? point : `${point}θ`,
    meaning:
      what === 'force'
        ? `stiffness of the spring at ${point}`
        : `stiffness of ${point} against turning`,
  };
}

function systemOf(context: CaseContext, work: ForceMethod): LinearSystem {
  return {
    figures: context.printing.figures,
    unknowns: work.releases.map((release, index) => ({
      of: name(context.symbols.unknown(release.unknown)),
      unit: unitOfRedundant(context, release),
      value: work.redundants[index] ?? 0,
    })),
    rows: work.releases.map((_, j) => ({
      number: j + 1,
      factors: work.releases.map(
        (__, k) =>
          (work.underUnits[j]?.[k]?.total ?? 0) +
          (j === k ? (work.allowed[j]?.give ?? 0) : 0),
      ),
      known: -(work.underLoads[j]?.total ?? 0) - (work.allowed[j]?.moved ?? 0) + 0,
      unit: unitOfMovement(context, work, [j + 1, 0]),
    })),
  };
}
