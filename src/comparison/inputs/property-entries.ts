import type { CrossSection, Material, ProjectDefinition } from '../../project/index.ts';
import { quantityField, textField, type Entry, type Field } from './entry.ts';
import type { Names } from './names.ts';
import { givenText } from './value.ts';

/** Cross-sections of the project's own, by name. */
export function sectionEntries(of: ProjectDefinition, names: Names): readonly Entry[] {
  return Object.entries(of.sections).map(([name, section]) => {
    const what = `section ${names.section(name)}`;
    return {
      part: 'sections',
      key: names.section(name),
      what,
      whole: sectionText(section),
      rekeyed: { kind: 'renamed', name, what: `section ${name}` },
      fields: sectionFields(section, what),
    };
  });
}

/** Materials of the project's own, by name. */
export function materialEntries(of: ProjectDefinition, names: Names): readonly Entry[] {
  return Object.entries(of.materials).map(([name, material]) => {
    const what = `material ${names.material(name)}`;
    return {
      part: 'materials',
      key: names.material(name),
      what,
      whole: materialText(material),
      rekeyed: { kind: 'renamed', name, what: `material ${name}` },
      fields: materialFields(material, what),
    };
  });
}

/** The cross-section of a member by its name, or by its values where it has none. */
export function sectionOf(
  section: CrossSection,
  what: string,
  names: Names,
): Pick<Entry, 'what' | 'sort' | 'whole' | 'fields'> {
  const name = section.name === undefined ? undefined : names.section(section.name);
  return name === undefined
    ? {
        what,
        sort: 'values',
        whole: sectionText(section),
        fields: sectionFields(section, what),
      }
    : { what, sort: 'name', whole: name, fields: [textField(what, name)] };
}

/** The material of a member, likewise. */
export function materialOf(
  material: Material,
  what: string,
  names: Names,
): Pick<Entry, 'what' | 'sort' | 'whole' | 'fields'> {
  const name = material.name === undefined ? undefined : names.material(material.name);
  return name === undefined
    ? {
        what,
        sort: 'values',
        whole: materialText(material),
        fields: materialFields(material, what),
      }
    : { what, sort: 'name', whole: name, fields: [textField(what, name)] };
}

function sectionFields(section: CrossSection, what: string): readonly Field[] {
  return [
    quantityField(`I of ${what}`, section.I),
    quantityField(`S of ${what}`, section.S),
    quantityField(`A of ${what}`, section.A),
    quantityField(`weight of ${what}`, section.weight),
    quantityField(`depth of ${what}`, section.depth),
    textField(`source of ${what}`, section.source),
  ];
}

function materialFields(material: Material, what: string): readonly Field[] {
  return [
    quantityField(`E of ${what}`, material.E),
    quantityField(`density of ${what}`, material.density),
    quantityField(`expansion of ${what}`, material.expansion),
    textField(`source of ${what}`, material.source),
  ];
}

/** A cross-section in words: its name, or `A 7.65 in², I 204 in⁴`. */
export function sectionText({ I, S, A, weight, depth }: CrossSection): string {
  return listed({ I, S, A, weight, depth });
}

function materialText({ E, density, expansion }: Material): string {
  return listed({ E, density, expansion });
}

function listed(of: Readonly<Record<string, CrossSection['I']>>): string {
  return Object.entries(of)
    .flatMap(([name, size]) =>
      size === undefined ? [] : [`${name} ${givenText(size)}`],
    )
    .join(', ');
}
