import type { BeamDefinition, BeamLoad, CarriedReaction } from '../../definitions.ts';
import { readLimits, type ReadLimits } from '../../limits.ts';
import type { Premises } from '../../premises.ts';
import type { Reading } from '../../reading.ts';
import { present } from '../../shape/present.ts';
import { readAxis, type Axis } from './axis.ts';
import type { BeamFile } from './beam-file.ts';
import { readBracing } from './bracing.ts';
import { readHinges } from './hinges.ts';
import { readUses, type LoadContext } from './load-context.ts';
import { readLoads } from './read-loads.ts';
import { readMaterial, readSections } from './sections.ts';
import { readSelfWeight } from './self-weight.ts';
import { readSupports } from './supports.ts';
import type { ThermalProperties } from './temperature-line.ts';

/**
 * Turns a beam's file into its definition: every name looked up, every load a single load of a
 * single case at a place on the axis. What could not be read of the file is left aside, so that
 * the rest is checked as well; undefined where anything was reported as an error.
 */
export function readBeam(
  file: Partial<BeamFile>,
  premises: Premises,
  reading: Reading,
): BeamDefinition | undefined {
  // Without points no name can be told from a slip, so nothing more is looked at.
  if (file.points === undefined) return undefined;
  const axis = readAxis(file.points, reading);
  const context = readContext(file, { axis, premises, reading });
  const material = readMaterial(file, premises, reading);
  const sections = readSections(file, { axis, premises }, reading);
  const isRead = (file.section ?? file.sections) === undefined || sections.length > 0;
  const areRead = isRead && (file.material === undefined || material !== undefined);
  const { loads, temperatures, carried, trains } = readLoads(
    file.loads ?? [],
    present<ThermalProperties>({ sections, material, areRead }),
    context,
  );
  const weight = readSelfWeight(file, { sections, material }, context);
  const limits =
    file.deflection_limits && readLimits(file.deflection_limits, premises, reading);
  const bracing = file.bracing && readBracing(file.bracing, axis, reading);
  const uses = readUses(file.uses, premises, reading);
  if (reading.hasFailed()) return undefined;
  // Nothing failed, so every key that must be there is.
  return define(file as BeamFile, context, {
    loads: [...loads, ...weight],
    temperatures,
    carried,
    trains,
    material,
    sections,
    limits,
    bracing,
    uses,
  });
}

function readContext(
  file: Partial<BeamFile>,
  known: Pick<LoadContext, 'axis' | 'premises' | 'reading'>,
): LoadContext {
  const { reading } = known;
  const supports =
    file.supports === undefined ? [] : readSupports(file.supports, known, reading);
  const hinges = readHinges(file.hinges ?? [], { ...known, supports }, reading);
  return { ...known, supports, hinges, nextId: counter() };
}

// Four digits, so that ids sort as the file reads.
function counter(): () => string {
  let count = 0;
  return () => {
    count += 1;
    return `load-${String(count).padStart(4, '0')}`;
  };
}

interface BeamParts extends Pick<
  BeamDefinition,
  'sections' | 'temperatures' | 'trains' | 'uses'
> {
  readonly loads: readonly BeamLoad[];
  readonly carried: readonly CarriedReaction[];
  readonly material: BeamDefinition['material'] | undefined;
  readonly limits: ReadLimits | undefined;
  readonly bracing: BeamDefinition['bracing'] | undefined;
}

function define(
  file: BeamFile,
  { axis, supports, hinges, reading }: LoadContext & { readonly axis: Axis },
  { limits, ...parts }: BeamParts,
): BeamDefinition {
  return present<BeamDefinition>({
    ...parts,
    kind: 'beam',
    file: reading.file,
    mark: file.mark.value,
    markSpan: file.mark.span,
    title: file.title,
    where: file.where,
    typical: file.typical,
    points: axis.points,
    supports,
    supportsSpan: file.supports.span,
    hinges,
    selfWeight: file.self_weight?.value,
    deflectionLimits: limits?.limits,
    cantilevers: limits?.cantilevers,
    cautions: file.cautions,
  });
}
