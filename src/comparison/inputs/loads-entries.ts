import type { CombinationRequest, LoadsDefinition } from '../../project/index.ts';
import {
  claimField,
  numberField,
  quantityField,
  textField,
  type Entry,
  type Field,
} from './entry.ts';
import type { Names } from './names.ts';
import { givenText, numberText } from './value.ts';

/** Load cases by mark. */
export function caseEntries(loads: LoadsDefinition, names: Names): readonly Entry[] {
  return loads.cases.map(({ mark, title, kind, source, pattern, category }) => {
    const what = `case ${names.case(mark)}`;
    const whole = [title, kind].filter((one) => one !== undefined).join(', ');
    return {
      part: 'cases',
      key: names.case(mark),
      what,
      ...(whole === '' ? {} : { whole }),
      rekeyed: { kind: 'renamed', name: mark, what: `case ${mark}` },
      fields: [
        textField(`title of ${what}`, title),
        textField(`kind of ${what}`, kind),
        textField(`source of ${what}`, source),
        claimField(`pattern loading of ${what}`, pattern),
        textField(`category of ${what}`, category),
      ],
    };
  });
}

/** Loads per area; `marks` are the cases that either side gives any of them, so that fields stand in pairs. */
export function areaEntries(
  loads: LoadsDefinition,
  names: Names,
  marks: readonly string[],
): readonly Entry[] {
  return Object.values(loads.areas).map(({ name, source, byCase }) => {
    const what = `area load ${names.area(name)}`;
    const given = new Map(
      Object.entries(byCase).map(([mark, size]) => [names.case(mark), size]),
    );
    return {
      part: 'areas',
      key: names.area(name),
      what,
      whole: [...given].map(([mark, size]) => `${mark} ${givenText(size)}`).join(', '),
      rekeyed: { kind: 'renamed', name, what: `area load ${name}` },
      fields: [
        ...marks.map((mark) =>
          quantityField(`${what} in case ${mark}`, given.get(mark)),
        ),
        textField(`source of ${what}`, source),
      ],
    };
  });
}

/** Named sets and sums of the user's own; `marks` as for areas. */
export function combinationEntries(
  loads: LoadsDefinition,
  names: Names,
  marks: readonly string[],
): readonly Entry[] {
  return [
    ...loads.combinations.map((request) => combinationEntry(request, names, marks)),
    ...loads.alternatives.map((cases): Entry => {
      const never = cases.map(names.case).sort().join(' and ');
      return {
        part: 'combinations',
        key: `never ${never}`,
        what: `cases ${never} never together`,
        fields: [],
      };
    }),
  ];
}

function combinationEntry(
  request: CombinationRequest,
  names: Names,
  marks: readonly string[],
): Entry {
  if (request.kind === 'named-set') {
    const what = `combinations ${request.name}`;
    return {
      part: 'combinations',
      key: request.name,
      what,
      fields: [
        textField(`expression of ${what}`, request.expression ?? '6.10'),
        textField(`national values of ${what}`, nationalText(request.national)),
      ],
    };
  }
  const { mark } = request;
  const what = `combination ${mark}`;
  const factors = new Map(
    Object.entries(request.factors).map(([of, factor]) => [names.case(of), factor]),
  );
  return {
    part: 'combinations',
    key: mark,
    what,
    whole: [...factors]
      .map(([of, factor]) => `${numberText(factor)} ${of}`)
      .join(' + '),
    rekeyed: { kind: 'renamed', name: mark },
    fields: [
      ...marks.map((of): Field =>
        numberField(`factor of ${of} in ${what}`, factors.get(of)),
      ),
      textField(`use of ${what}`, request.for),
    ],
  };
}

function nationalText(
  national: Readonly<Record<string, number>> | undefined,
): string | undefined {
  const entries = Object.entries(national ?? {});
  return entries.length === 0
    ? undefined
    : entries
        .map(([name, value]) => `${name} ${numberText(value)}`)
        .sort()
        .join(', ');
}
