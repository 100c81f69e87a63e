import type { Span } from '../../../diagnostics/index.ts';
import type { GivenQuantity } from '../../../units/index.ts';
import type { BeamDefinition, BeamPlace, BeamTemperature } from '../../definitions.ts';
import { theCase } from './cases.ts';
import { basesOf } from './load-base.ts';
import type { LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';
import { readStretch, type Reach } from './stretch.ts';

type TemperatureLine = Extract<LoadLine, { kind: 'temperature' }>;

/** What a line may leave to the beam: the depth of its cross-sections and the expansion of its material. */
export interface ThermalProperties extends Pick<
  BeamDefinition,
  'sections' | 'material'
> {
  /** False where a cross-section or a material is given and could not be read. */
  readonly areRead: boolean;
}

/** The temperature differences of one line: one, or one a cross-section where the line leaves the depth to them. */
export function readTemperatureLine(
  line: TemperatureLine,
  properties: ThermalProperties,
  context: LoadContext,
): readonly BeamTemperature[] {
  const { value: temperature, span } = line.temperature;
  const mark = theCase(line.case, line.lineSpan, context.premises, context.reading);
  const reach = readStretch(
    line,
    { axis: context.axis, span: line.lineSpan },
    context.reading,
  );
  const sizes = mark === undefined ? [] : [{ case: mark, value: temperature }];
  const bases = basesOf(line, sizes, line.lineSpan, context);
  const expansion = temperature.expansion ?? properties.material?.expansion;
  if (expansion === undefined)
    reportMissing({ key: 'expansion', of: 'material', span }, properties, context);
  const deep = reach === undefined ? [] : depthsAlong(line, reach, properties, context);
  if (expansion === undefined) return [];
  return bases.flatMap(({ base }) =>
    deep.map(({ start, end, depth }) => ({
      ...base,
      id: context.nextId(),
      start,
      end,
      difference: temperature.difference,
      depth,
      expansion,
      taken: {
        depth: temperature.depth === undefined,
        expansion: temperature.expansion === undefined,
      },
    })),
  );
}

interface Deep extends Reach {
  readonly depth: GivenQuantity;
}

/** The line's own depth, or those of the cross-sections that it runs over. */
function depthsAlong(
  { temperature }: TemperatureLine,
  reach: Reach,
  properties: ThermalProperties,
  context: LoadContext,
): readonly Deep[] {
  const own = temperature.value.depth;
  if (own !== undefined) return [{ ...reach, depth: own }];
  const { tolerance } = context.axis;
  const stretches = properties.sections.filter(
    ({ from, to }) =>
      to.x - reach.start.x > tolerance && reach.end.x - from.x > tolerance,
  );
  const deep = stretches.flatMap(({ from, to, section: { depth } }) =>
    depth === undefined
      ? []
      : [{ start: farther(reach.start, from), end: nearer(reach.end, to), depth }],
  );
  if (stretches.length > 0 && deep.length === stretches.length) return deep;
  const { span } = temperature;
  reportMissing({ key: 'depth', of: 'cross-section', span }, properties, context);
  return [];
}

const farther = (one: BeamPlace, other: BeamPlace): BeamPlace =>
  other.x > one.x ? other : one;
const nearer = (one: BeamPlace, other: BeamPlace): BeamPlace =>
  other.x < one.x ? other : one;

function reportMissing(
  what: { readonly key: string; readonly of: string; readonly span: Span },
  { areRead }: ThermalProperties,
  { reading }: LoadContext,
): void {
  const { key, of, span } = what;
  // What could not be read may have said it, and has been reported.
  if (areRead)
    reading.report({
      code: 'missing-key',
      message: `\`${key}\` is missing: neither this line nor the ${of} gives it`,
      span,
      hints: [`add \`${key}\` here, or to the ${of}`],
    });
}
