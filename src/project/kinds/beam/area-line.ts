import { nearest } from '../../../diagnostics/index.ts';
import {
  displayUnit,
  multiplyDimensions,
  type GivenQuantity,
} from '../../../units/index.ts';
import { computedQuantity } from '../../computed.ts';
import type { AreaLoad, BeamLoad } from '../../definitions.ts';
import type { Premises } from '../../premises.ts';
import { knownCase, type OfCase } from './cases.ts';
import { down } from './direction.ts';
import { basesOf } from './load-base.ts';
import type { LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';
import { readStretch } from './stretch.ts';
import { listed } from '../../shape/listed.ts';

type AreaLine = Extract<LoadLine, { kind: 'area' }>;

/** Loads per length from an area load and a tributary width: one for each case of the area load. */
export function readAreaLine(
  line: AreaLine,
  context: LoadContext,
): readonly BeamLoad[] {
  const area = findArea(line, context);
  const reach = readStretch(
    line,
    { axis: context.axis, span: line.lineSpan },
    context.reading,
  );
  const pressures = area === undefined ? [] : pressuresOf(area, line, context);
  const [first, second] = line.width;
  const bases = basesOf(line, pressures, line.lineSpan, context);
  if (
    area === undefined ||
    reach === undefined ||
    first === undefined ||
    second === undefined
  )
    return [];
  const along = (pressure: GivenQuantity, width: GivenQuantity): GivenQuantity =>
    product(pressure, width, context.premises);
  return bases.map(({ base, value }) => ({
    ...base,
    id: context.nextId(),
    kind: 'distributed',
    ...reach,
    sizes: [along(value, first), along(value, second)],
    direction: line.direction ?? down,
    from: { kind: 'area', area: area.name, pressure: value, widths: [first, second] },
  }));
}

function pressuresOf(
  area: AreaLoad,
  line: AreaLine,
  context: LoadContext,
): readonly OfCase<GivenQuantity>[] {
  return Object.entries(area.byCase).map(([mark, value]) => {
    const span = line.area.span;
    const known = knownCase({ value: mark, span }, context.premises, context.reading);
    return { case: mark, value: known ? value : undefined };
  });
}

function findArea(line: AreaLine, context: LoadContext): AreaLoad | undefined {
  const { areas } = context.premises;
  const found = areas?.get(line.area.value);
  if (found !== undefined || areas === undefined) return found;
  const names = [...areas.keys()];
  const near = nearest(line.area.value, names);
  context.reading.report({
    code: 'unknown-area',
    message: `loads.yaml has no area load \`${line.area.value}\``,
    span: line.area.span,
    hints: [
      near !== undefined
        ? `write \`${near}\``
        : names.length > 0
          ? `area loads in loads.yaml: ${listed(names)}`
          : 'add it to `areas` in loads.yaml',
    ],
  });
  return undefined;
}

function product(
  pressure: GivenQuantity,
  width: GivenQuantity,
  premises: Premises,
): GivenQuantity {
  const dimension = multiplyDimensions(pressure.dimension, width.dimension);
  return computedQuantity(
    { si: pressure.si * width.si, dimension },
    displayUnit(premises.units, 'force-per-length'),
  );
}
