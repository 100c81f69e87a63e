import type { Figure } from '../../equation/index.ts';
import type { BeamSupport, CarriedReaction, LoadCase } from '../../project/index.ts';
import { sameUnit } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { asGiven, dimension, tidy } from '../printing.ts';
import type { GivenStep, SupportRow } from '../steps.ts';
import { loadRow } from './load-rows.ts';
import { sectionFacts } from './section-fact.ts';
import { temperatureFacts } from './temperature-rows.ts';

/** Item 1 of a sheet: geometry, supports, loads, section and material as the file gives them. */
export function narrateGiven(
  context: MemberContext,
  cases: readonly LoadCase[],
  carried: ReadonlyMap<string, CarriedReaction>,
): readonly GivenStep[] {
  const { definition } = context;
  return [
    geometry(context),
    { kind: 'supports', supports: definition.supports.map(supportRow) },
    {
      kind: 'loads',
      loads: context.structure.loads.map(({ id }) => loadRow(context, id, carried)),
      cases: cases.map(({ mark, title }) => ({
        mark,
        ...(title === undefined ? {} : { title }),
      })),
    },
    ...temperatureFacts(context),
    ...sectionFacts(context),
    {
      kind: 'taken',
      selfWeight: definition.selfWeight !== undefined,
      hasStiffness: context.structure.stiffness !== undefined,
      limitStates: false,
      deflectionLimits: (definition.deflectionLimits ?? []).map(({ entry, text }) => ({
        entry,
        text,
      })),
    },
  ];
}

function geometry({ definition, structure, printing }: MemberContext): GivenStep {
  const first = structure.points[0]?.x ?? 0;
  const last = structure.points.at(-1)?.x ?? 0;
  return {
    kind: 'geometry',
    length: dimension(printing, last - first),
    points: definition.points.map((point) => {
      const station = point.relative
        ? dimension(printing, point.x)
        : asGiven(point.given);
      const decimal = tidy(printing, 'length', point.x);
      return {
        name: point.name,
        station,
        ...(readsAlike(station, decimal) ? {} : { decimal }),
        ...(point.relative ? { fromBefore: asGiven(point.given) } : {}),
      };
    }),
    hinges: definition.hinges.map(({ point }) => point),
  };
}

function readsAlike(one: Figure, other: Figure): boolean {
  const isCompound = one.print.kind === 'given' && one.print.compound;
  return one.quantity.si === 0 || (!isCompound && sameUnit(one.unit, other.unit));
}

const holds: Readonly<Record<BeamSupport['type'], SupportRow['holds']>> = {
  pin: { x: true, y: true, moment: false },
  roller: { x: false, y: true, moment: false },
  fixed: { x: true, y: true, moment: true },
  guide: { x: true, y: false, moment: true },
  spring: { x: false, y: true, moment: false },
};

function supportRow(support: BeamSupport): SupportRow {
  const { point, type, normal, stiffness, rotation, settlement } = support;
  const held = holds[type];
  const isTurningOnly = type === 'spring' && stiffness === undefined;
  return {
    point,
    type,
    holds: {
      x: held.x,
      y: held.y && !isTurningOnly,
      moment: held.moment || rotation !== undefined,
    },
    ...(normal === undefined ? {} : { normal: asGiven(normal) }),
    ...(stiffness === undefined ? {} : { stiffness: asGiven(stiffness) }),
    ...(rotation === undefined ? {} : { rotation: asGiven(rotation) }),
    ...(settlement === undefined
      ? {}
      : { settlement: { value: asGiven(settlement.value), case: settlement.case } }),
  };
}
