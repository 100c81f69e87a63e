import type {
  BeamDefinition,
  BeamPlace,
  CrossSection,
  Material,
} from '../../definitions.ts';
import { findMaterialNamed, findSectionNamed } from '../../named-properties.ts';
import type { Premises } from '../../premises.ts';
import type { Reading } from '../../reading.ts';
import type { SectionEntry, SectionStretch } from '../../section-entry.ts';
import type { Placed } from '../../shape/shape.ts';
import type { Axis } from './axis.ts';
import type { BeamFile } from './beam-file.ts';
import { readPlace } from './place.ts';

type Stretches = BeamDefinition['sections'];

/** The cross-sections of a beam by stretch from left to right; none where nothing is given or anything is at fault, which is reported. */
export function readSections(
  file: Partial<BeamFile>,
  context: { readonly axis: Axis; readonly premises: Premises },
  reading: Reading,
): Stretches {
  const { section, sections } = file;
  if (section !== undefined && sections !== undefined) {
    reading.report({
      code: 'keys-together',
      message: '`section` cannot stand beside `sections`',
      span: section.span,
      hints: [
        'keep `section` for one cross-section all along, or `sections` for several',
      ],
    });
    return [];
  }
  if (section !== undefined) return prismatic(section, context, reading);
  if (sections === undefined) return [];
  const read = sections.value.map((stretch) => readStretch(stretch, context, reading));
  const known = read.filter((stretch) => stretch !== undefined);
  if (known.length < read.length || !context.axis.whole) return [];
  const inOrder = known.sort((one, other) => one.from.x - other.from.x);
  if (reportGaps(inOrder, context.axis, reading)) return [];
  return inOrder.map(({ from, to, section: own }) => ({ from, to, section: own }));
}

function prismatic(
  entry: Placed<SectionEntry>,
  context: { readonly axis: Axis; readonly premises: Premises },
  reading: Reading,
): Stretches {
  const section = readSection(entry, context.premises, reading);
  const [first, last] = [context.axis.points[0], context.axis.points.at(-1)];
  if (
    section === undefined ||
    !context.axis.whole ||
    first === undefined ||
    last === undefined
  )
    return [];
  return [
    {
      from: { x: first.x, point: first.name },
      to: { x: last.x, point: last.name },
      section,
    },
  ];
}

interface ReadSectionStretch {
  readonly from: BeamPlace;
  readonly to: BeamPlace;
  readonly section: CrossSection;
  readonly fromSpan: Placed<string>['span'];
}

function readStretch(
  stretch: SectionStretch,
  context: { readonly axis: Axis; readonly premises: Premises },
  reading: Reading,
): ReadSectionStretch | undefined {
  const from = readPlace(stretch.from, context.axis, reading);
  const to = readPlace(stretch.to, context.axis, reading);
  const section = readSection(stretch.section, context.premises, reading);
  if (from === undefined || to === undefined || section === undefined) return undefined;
  if (from.x < to.x) return { from, to, section, fromSpan: stretch.from.span };
  reading.report({
    code: from.x === to.x ? 'no-length' : 'runs-backwards',
    message:
      from.x === to.x
        ? 'this stretch has no length'
        : 'this stretch ends left of where it begins',
    span: stretch.to.span,
    hints: ['give `from` and `to` from left to right'],
  });
  return undefined;
}

// Stretches, from left to right, must cover the beam once: properties that nobody gave are not invented.
function reportGaps(
  stretches: readonly ReadSectionStretch[],
  axis: Axis,
  reading: Reading,
): boolean {
  let found = false;
  let covered = axis.points[0]?.x ?? 0;
  for (const { from, to, fromSpan } of stretches) {
    const step = from.x - covered;
    if (Math.abs(step) > axis.tolerance) {
      found = true;
      reading.report({
        code: step > 0 ? 'section-gap' : 'sections-overlap',
        message:
          step > 0
            ? 'no cross-section is given for the stretch before this one'
            : 'this stretch begins inside the one before it',
        span: fromSpan,
        hints: ['begin each stretch where the one before ends'],
      });
    }
    covered = Math.max(covered, to.x);
  }
  const last = stretches.at(-1);
  if (last !== undefined && (axis.points.at(-1)?.x ?? 0) - covered > axis.tolerance) {
    found = true;
    reading.report({
      code: 'section-gap',
      message: 'no cross-section is given for the stretch after the last one',
      span: last.fromSpan,
      hints: ['let the last stretch end at the end of the beam'],
    });
  }
  return found;
}

/** A cross-section by its values or by its name, from the project or from the built-in tables. */
function readSection(
  entry: Placed<SectionEntry>,
  premises: Premises,
  reading: Reading,
): CrossSection | undefined {
  const { value, span } = entry;
  if (value.kind === 'values') return value.values;
  return findSectionNamed({ value: value.name, span }, premises, reading);
}

/** The material of a beam by its values or by its name; undefined where none is given or found. */
export function readMaterial(
  file: Partial<BeamFile>,
  premises: Premises,
  reading: Reading,
): Material | undefined {
  if (file.material === undefined) return undefined;
  const { value, span } = file.material;
  if (value.kind === 'values') return value.values;
  return findMaterialNamed({ value: value.name, span }, premises, reading);
}
