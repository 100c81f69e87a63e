import type { BeamDefinition } from '../definitions.ts';
import { readLimits } from '../limits.ts';
import type { Premises } from '../premises.ts';
import type { Reading } from '../reading.ts';
import type { Placed } from '../shape/shape.ts';
import { readAxis, type Axis } from './axis.ts';
import type { BeamFile } from './beam-file.ts';
import { readHinges } from './hinges.ts';
import { readUses, type LoadContext } from './load-context.ts';
import { findPoint } from './place.ts';
import { readLoads } from './read-loads.ts';
import { readMaterial, readSections } from './sections.ts';
import { readSelfWeight } from './self-weight.ts';
import { readSupports } from './supports.ts';

const noAxis: Axis = { names: [], points: [], whole: false, tolerance: 0 };

/**
 * Turns a beam's file into its definition: every name looked up, every load a single load of a
 * single case at a place on the axis. What could not be read of the file is left aside, so that
 * the rest is checked as well; the result stands only where nothing was reported as an error.
 */
export function readBeam(
  file: Partial<BeamFile>,
  premises: Premises,
  reading: Reading,
): BeamDefinition | undefined {
  const { points, supports: supportEntries, mark } = file;
  // Without points no name can be told from a slip, so nothing more is looked at.
  if (points === undefined) return undefined;
  const axis = points === undefined ? noAxis : readAxis(points, reading);
  const supports =
    supportEntries === undefined
      ? []
      : readSupports(supportEntries, { axis, premises }, reading);
  const hinges = readHinges(file.hinges ?? [], { axis, supports }, reading);
  const context: LoadContext = {
    axis,
    hinges,
    supports,
    premises,
    reading,
    nextId: counter(),
  };
  const { loads, carried } = readLoads(file.loads ?? [], context);
  const material = readMaterial(file, premises, reading);
  const sections = readSections(file, { axis, premises }, reading);
  const sectionsGiven = file.section !== undefined || file.sections !== undefined;
  const weight = readSelfWeight(
    file.self_weight,
    { sections, material, sectionsGiven },
    context,
  );
  const limits =
    file.deflection_limits && readLimits(file.deflection_limits, premises, reading);
  const bracing = readBracing(file.bracing, axis, reading);
  const uses = readUses(file.uses, premises, reading);
  if (mark === undefined || supportEntries === undefined) return undefined;
  return {
    kind: 'beam',
    file: reading.file,
    mark: mark.value,
    markSpan: mark.span,
    ...(file.title === undefined ? {} : { title: file.title }),
    ...(file.where === undefined ? {} : { where: file.where }),
    ...(file.typical === undefined ? {} : { typical: file.typical }),
    points: axis.points,
    supports,
    supportsSpan: supportEntries.span,
    hinges,
    loads: [...loads, ...weight],
    carried,
    ...(file.self_weight === undefined ? {} : { selfWeight: file.self_weight.value }),
    sections,
    ...(material === undefined ? {} : { material }),
    ...(limits === undefined ? {} : { deflectionLimits: limits.limits }),
    ...(limits?.cantilevers === undefined ? {} : { cantilevers: limits.cantilevers }),
    ...(bracing === undefined ? {} : { bracing }),
    cautions: file.cautions ?? [],
    uses,
  };
}

// Four digits, so that ids sort as the file reads.
function counter(): () => string {
  let count = 0;
  return () => {
    count += 1;
    return `load-${String(count).padStart(4, '0')}`;
  };
}

function readBracing(
  bracing: BeamFile['bracing'],
  axis: Axis,
  reading: Reading,
): BeamDefinition['bracing'] {
  if (bracing === undefined) return undefined;
  const line = (braced: readonly Placed<string>[] | undefined): string | undefined => {
    if (braced === undefined) return undefined;
    for (const one of braced.filter(({ value }) => value !== 'continuous'))
      findPoint(one, axis, reading);
    return braced.map(({ value }) => value).join(', ');
  };
  const [top, bottom] = [line(bracing.top), line(bracing.bottom)];
  return {
    ...(top === undefined ? {} : { top }),
    ...(bottom === undefined ? {} : { bottom }),
  };
}
