import {
  displayUnit,
  multiplyDimensions,
  type GivenQuantity,
} from '../../../units/index.ts';
import { computedQuantity } from '../../computed.ts';
import type {
  BeamDefinition,
  BeamLoad,
  CrossSection,
  LoadOrigin,
  Material,
} from '../../definitions.ts';
import type { Placed } from '../../shape/shape.ts';
import type { BeamFile } from './beam-file.ts';
import { knownCase } from './cases.ts';
import { down } from './direction.ts';
import type { LoadContext } from './load-context.ts';

/** The weight of the beam as loads of the case that `self_weight` names, one a stretch. */
export function readSelfWeight(
  file: Pick<Partial<BeamFile>, 'self_weight' | 'section' | 'sections'>,
  beam: Pick<BeamDefinition, 'sections'> & { readonly material: Material | undefined },
  context: LoadContext,
): readonly BeamLoad[] {
  const mark = file.self_weight;
  if (mark === undefined || !knownCase(mark, context.premises, context.reading))
    return [];
  if (file.section === undefined && file.sections === undefined)
    return reportUnknown(mark, 'no cross-section is given', context);
  return beam.sections.flatMap(({ from, to, section }): readonly BeamLoad[] => {
    const weighed = weightOf(section, beam.material, context.premises.units);
    if (weighed === undefined)
      return reportUnknown(
        mark,
        'its cross-section has no weight, or no area and density',
        context,
      );
    return [
      {
        id: context.nextId(),
        case: mark.value,
        uses: [],
        span: mark.span,
        kind: 'distributed',
        start: from,
        end: to,
        sizes: [weighed.weight, weighed.weight],
        direction: down,
        from: { kind: 'self-weight', ...weighed },
      },
    ];
  });
}

type SelfWeight = Omit<Extract<LoadOrigin, { kind: 'self-weight' }>, 'kind'>;

function weightOf(
  section: CrossSection,
  material: Material | undefined,
  units: 'us' | 'si',
): SelfWeight | undefined {
  if (section.weight !== undefined)
    return { weight: section.weight, how: 'section-weight' };
  if (section.A === undefined || material?.density === undefined) return undefined;
  return {
    weight: perLength(section.A, material.density, units),
    how: 'area-times-density',
  };
}

function perLength(
  area: GivenQuantity,
  density: GivenQuantity,
  units: 'us' | 'si',
): GivenQuantity {
  const dimension = multiplyDimensions(area.dimension, density.dimension);
  return computedQuantity(
    { si: area.si * density.si, dimension },
    displayUnit(units, 'force-per-length'),
  );
}

function reportUnknown(
  mark: Placed<string>,
  why: string,
  context: LoadContext,
): readonly BeamLoad[] {
  context.reading.report({
    code: 'self-weight-unknown',
    message: `the beam's own weight cannot be worked out: ${why}`,
    span: mark.span,
    hints: [
      'give the cross-section its `weight`, or its `A` and the material its `density`',
    ],
  });
  return [];
}
