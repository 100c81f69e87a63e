import { nearest } from '../diagnostics/index.ts';
import {
  crossSectionNames,
  findCrossSection,
  findMaterial,
  materialNames,
} from '../standards/index.ts';
import type { CrossSection, Material } from './definitions.ts';
import type { Premises } from './premises.ts';
import type { Reading } from './reading.ts';
import { present } from './shape/present.ts';
import type { Placed } from './shape/shape.ts';

/** A cross-section by name: the project's own first, then the built-in tables; an unknown name is reported. */
export function findSectionNamed(
  name: Placed<string>,
  premises: Premises,
  reading: Reading,
): CrossSection | undefined {
  const own = premises.sections.get(name.value);
  // One of the project's own that could not be read has been reported where it stands.
  if (own !== undefined || premises.sections.has(name.value)) return own;
  const found = tabulatedSection(name.value);
  if (found !== undefined) return found;
  const near = nearest(name.value, [
    ...premises.sections.keys(),
    ...crossSectionNames(),
  ]);
  reading.report({
    code: 'unknown-section',
    message: `no cross-section \`${name.value}\` is known`,
    span: name.span,
    hints: [
      ...(near === undefined ? [] : [`write \`${near}\``]),
      'give its values: { A: …, I: …, S: … }, here or under `sections` in project.yaml',
    ],
  });
  return undefined;
}

/** A material by name: the project's own first, then the built-in tables; an unknown name is reported. */
export function findMaterialNamed(
  name: Placed<string>,
  premises: Premises,
  reading: Reading,
): Material | undefined {
  const own = premises.materials.get(name.value);
  if (own !== undefined || premises.materials.has(name.value)) return own;
  const found = findMaterial(name.value);
  if (found !== undefined) return found;
  const near = nearest(name.value, [...premises.materials.keys(), ...materialNames()]);
  reading.report({
    code: 'unknown-material',
    message: `no material \`${name.value}\` is known`,
    span: name.span,
    hints: [
      ...(near === undefined ? [] : [`write \`${near}\``]),
      'give its values: { E: …, density: … }, here or under `materials` in project.yaml',
    ],
  });
  return undefined;
}

// The table's widths and thicknesses are of no use to statics and stay behind.
function tabulatedSection(name: string): CrossSection | undefined {
  const found = findCrossSection(name);
  if (found === undefined) return undefined;
  const { A, I, S, weight, depth, source } = found;
  return present<CrossSection>({ name: found.name, A, I, S, weight, depth, source });
}
