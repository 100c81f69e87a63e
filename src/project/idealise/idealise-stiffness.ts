import type { StiffnessStretch } from '../../statics/index.ts';
import type { BeamDefinition } from '../definitions.ts';

/**
 * E times I by stretch, from left to right; undefined where E, or I of any stretch, is not known:
 * a beam half known bends as one that is not known.
 */
export function idealiseStiffness({
  sections,
  material,
}: Pick<BeamDefinition, 'sections' | 'material'>):
  readonly StiffnessStretch[] | undefined {
  const E = material?.E;
  if (E === undefined || sections.length === 0) return undefined;
  const stretches = sections.flatMap(({ from, to, section: { I } }) =>
    I === undefined ? [] : [{ from: from.x, to: to.x, EI: E.si * I.si }],
  );
  return stretches.length < sections.length ? undefined : stretches;
}
