import type { BeamSupport } from '../../project/index.ts';
import {
  numberField,
  quantityField,
  setField,
  textField,
  type Entry,
  type Field,
} from './entry.ts';
import type { Axis } from './places.ts';
import { limitEntries } from './project-entries.ts';
import { materialOf } from './property-entries.ts';
import { givenText } from './value.ts';

/** All that a member says besides its points, loads, sections and cautions; `mark` is its later one. */
export function memberEntries(axis: Axis, mark: string): readonly Entry[] {
  const entries: readonly Omit<Entry, 'part' | 'member'>[] = [
    placeEntry(axis, mark),
    ...axis.beam.supports.map((support) => supportEntry(support, axis, mark)),
    ...axis.beam.hinges.map(({ point }): Omit<Entry, 'part'> => {
      const name = axis.names.point(axis.beam.mark, point);
      return {
        key: `hinge ${name}`,
        what: `hinge at ${name} of ${mark}`,
        rekeyed: { kind: 'moved', name, what: `hinge of ${mark}` },
        fields: [],
      };
    }),
    ...materialEntry(axis, mark),
    ...limitEntries(axis.beam.deflectionLimits ?? [], ` of ${mark}`, axis.names),
    judgedEntry(axis, mark),
  ];
  return entries.map((entry) => ({ ...entry, part: 'members', member: mark }));
}

type Bare = Omit<Entry, 'part' | 'member'>;

function placeEntry({ beam, names }: Axis, mark: string): Bare {
  const { title, where, typical, selfWeight } = beam;
  return {
    key: 'place',
    what: mark,
    fields: [
      textField(`title of ${mark}`, title),
      textField(`level of ${mark}`, where?.level),
      textField(`grid of ${mark}`, where?.grid),
      textField(`drawing of ${mark}`, where?.drawing),
      numberField(`number of members like ${mark}`, typical?.count),
      textField(`note on members like ${mark}`, typical?.note),
      textField(
        `case of the self-weight of ${mark}`,
        selfWeight === undefined ? undefined : names.case(selfWeight),
      ),
    ],
  };
}

/** What its limits and limit states read. */
function judgedEntry(axis: Axis, mark: string): Bare {
  const { beam, names } = axis;
  const { deflectionLimits, cantilevers, bracing, uses } = beam;
  return {
    key: 'judged',
    what: mark,
    fields: [
      textField(
        `deflection limits of ${mark}`,
        // None at all is a statement too: those of the project do not hold then.
        deflectionLimits?.length === 0 ? 'none' : undefined,
      ),
      textField(`length of cantilevers in limits of ${mark}`, cantilevers),
      textField(`bracing at the top of ${mark}`, bracedAt(bracing?.top, axis)),
      textField(`bracing at the bottom of ${mark}`, bracedAt(bracing?.bottom, axis)),
      setField(`grounds of ${mark}`, uses.map(names.id)),
    ],
  };
}

/** Where a flange is braced, its points by their later names. */
function bracedAt(text: string | undefined, { beam, names }: Axis): string | undefined {
  return text
    ?.split(/,\s*/u)
    .map((name) => names.point(beam.mark, name))
    .join(', ');
}

function supportEntry(support: BeamSupport, axis: Axis, mark: string): Bare {
  const { names, beam } = axis;
  const name = names.point(beam.mark, support.point);
  const what = `support at ${name} of ${mark}`;
  const { settlement } = support;
  return {
    key: `support ${name}`,
    what,
    sort: support.type,
    whole: supportText(support, axis),
    rekeyed: { kind: 'moved', name, what: `support of ${mark} (${support.type})` },
    fields: [
      normalField(`direction of the ${what}`, support),
      quantityField(`stiffness of the ${what}`, support.stiffness),
      quantityField(`stiffness in rotation of the ${what}`, support.rotation),
      quantityField(`settlement of the ${what}`, settlement?.value),
      textField(
        `case of the settlement of the ${what}`,
        settlement === undefined ? undefined : names.case(settlement.case),
      ),
    ],
  };
}

// A roller whose reaction stands upright is an ordinary one, said or not.
function normalField(what: string, { type, normal }: BeamSupport): Field {
  if (type !== 'roller') return { what };
  const upright: Field = textField(what, '90°');
  if (normal === undefined || Math.abs(normal.si - Math.PI / 2) < 1e-12) return upright;
  return quantityField(what, normal);
}

function supportText(support: BeamSupport, { names }: Axis): string {
  const { type, normal, stiffness, rotation, settlement } = support;
  return [
    stiffness === undefined ? type : `${type} of ${givenText(stiffness)}`,
    ...(normal === undefined ? [] : [`reaction at ${givenText(normal)}`]),
    ...(rotation === undefined ? [] : [`${givenText(rotation)} in rotation`]),
    ...(settlement === undefined
      ? []
      : [`settles ${givenText(settlement.value)} in ${names.case(settlement.case)}`]),
  ].join(', ');
}

function materialEntry({ beam, names }: Axis, mark: string): readonly Bare[] {
  if (beam.material === undefined) return [];
  return [
    { key: 'material', ...materialOf(beam.material, `material of ${mark}`, names) },
  ];
}
