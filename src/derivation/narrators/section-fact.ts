import type { Expression, Symbol } from '../../equation/index.ts';
import type { CrossSection, Material } from '../../project/index.ts';
import type { GivenQuantity } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { asGiven } from '../printing.ts';
import type { GivenStep } from '../steps.ts';
import { placeOf } from './places.ts';

const meanings: Readonly<Record<string, string>> = {
  A: 'area of the cross-section',
  I: 'second moment of area about the bending axis',
  S: 'elastic section modulus',
  w: 'weight per length',
  d: 'depth of the cross-section',
  E: 'modulus of elasticity',
  γ: 'weight per volume',
  α: 'coefficient of thermal expansion',
};

interface NamedValue {
  readonly symbol: Symbol;
  readonly value: Expression;
}

function named(
  letter: string,
  given: GivenQuantity | undefined,
): readonly NamedValue[] {
  if (given === undefined) return [];
  return [
    { symbol: { letter, meaning: meanings[letter] ?? letter }, value: asGiven(given) },
  ];
}

/** Cross-sections by stretch, material and bracing; nothing where the file gives none. */
export function sectionFacts(context: MemberContext): readonly GivenStep[] {
  const { sections, material, bracing } = context.definition;
  if (sections.length === 0 && material === undefined && bracing === undefined)
    return [];
  return [
    {
      kind: 'section',
      stretches: sections.map(({ from, to, section: of }) => ({
        from: placeOf(context, from),
        to: placeOf(context, to),
        ...(of.name === undefined ? {} : { name: of.name }),
        values: sectionValues(of),
        ...(of.source === undefined ? {} : { source: of.source }),
      })),
      ...(material === undefined ? {} : { material: materialFact(material) }),
      ...(bracing === undefined ? {} : { bracing }),
    },
  ];
}

function sectionValues(of: CrossSection): readonly NamedValue[] {
  return [
    ...named('A', of.A),
    ...named('I', of.I),
    ...named('S', of.S),
    ...named('d', of.depth),
    ...named('w', of.weight),
  ];
}

function materialFact(
  material: Material,
): NonNullable<Extract<GivenStep, { kind: 'section' }>['material']> {
  return {
    ...(material.name === undefined ? {} : { name: material.name }),
    values: [
      ...named('E', material.E),
      ...named('γ', material.density),
      ...named('α', material.expansion),
    ],
    ...(material.source === undefined ? {} : { source: material.source }),
  };
}
