import type { FindingKind } from '../../../src/review/index.ts';
import type { Sheet, SheetStep, SheetTerm } from './narrated-sheet.ts';
import type { SheetSlip } from './write-sheet.ts';
import { figures } from './write-line.ts';

export const sheetSlips = [
  'arithmetic',
  'rounding',
  'carried',
  'no-unit',
  'unit',
  'sign',
  'lever-arm',
  'missing-term',
  'extra-term',
  'magnitude',
] as const;

export type SheetSlipKind = (typeof sheetSlips)[number];

/** A slip planted in a step, and any of the kinds that name it. */
export interface PlantedSlip extends SheetSlip {
  readonly kinds: readonly FindingKind[];
}

/** A slip in one of the steps that have a place for it; undefined where none has. */
export function plantSheetSlip(
  sheet: Sheet,
  kind: SheetSlipKind,
  pick: number,
): PlantedSlip | undefined {
  const { steps } = sheet;
  for (const [offset] of steps.entries()) {
    const step = (pick + offset) % steps.length;
    const own = steps[step]!;
    const counts = new Map(steps.map(({ symbol, count }) => [symbol, count]));
    const planted = plantIn(own, { kind, pick, counts });
    if (planted !== undefined) return { step, ...planted };
  }
  return undefined;
}

type Planted = Omit<PlantedSlip, 'step'>;

function plantIn(
  step: SheetStep,
  setting: {
    readonly kind: SheetSlipKind;
    readonly pick: number;
    /** What each symbol truly comes to. */
    readonly counts: ReadonlyMap<string, number>;
  },
): Planted | undefined {
  const { kind, pick, counts } = setting;
  if (kind === 'arithmetic' || kind === 'rounding') return inConclusion(step, kind);
  // A slip shows where its term is a good part of the sum.
  const worth = ({ isOpen, repeats, size, factor }: SheetTerm): number => {
    const own = isOpen ? step.count : size;
    return Math.abs(
      (repeats === undefined ? own : (counts.get(repeats) ?? 0)) * factor,
    );
  };
  const greatest = Math.max(...step.terms.map(worth));
  const shown = step.terms.filter((term) => worth(term) > 0.3 * greatest);
  const open = shown.filter(({ repeats, isOpen }) => repeats === undefined && !isOpen);
  const repeats = shown.filter((term) => term.repeats !== undefined);
  const isPlain = step.terms.every((one) => !Number.isNaN(one.size * one.factor));
  const among = kind === 'carried' ? repeats : open;
  const term = among[pick % Math.max(among.length, 1)];
  if (term === undefined || !isPlain || step.terms.length < 3) return undefined;
  // A term without an arm has none that could be another.
  if (kind === 'lever-arm' && term.factor === 1) return undefined;
  return { kinds: kindsOf(kind), terms: changedTerms(step, term, kind) };
}

function inConclusion(
  step: SheetStep,
  kind: 'arithmetic' | 'rounding',
): Planted | undefined {
  if (step.count === 0) return undefined;
  if (kind === 'arithmetic')
    return { kinds: ['arithmetic'], concludes: (count) => figures(count * 1.13, 3) };
  const [three, two] = [figures(step.count, 3), figures(step.count, 2)];
  // The two are apart by more than a unit of the third place.
  const isApart = Math.abs(Number(three) - Number(two)) > 0.015 * Math.abs(step.count);
  return isApart
    ? { kinds: ['rounding'], concludes: (count) => figures(count, 2) }
    : undefined;
}

function kindsOf(kind: SheetSlipKind): readonly FindingKind[] {
  if (kind === 'no-unit') return ['unit'];
  // Of a resultant the wrong arm is its place, and of a lump the arm is none.
  if (kind === 'lever-arm') return ['lever-arm', 'resultant', 'magnitude'];
  if (kind === 'magnitude') return ['magnitude', 'resultant'];
  return [kind];
}

function changedTerms(
  step: SheetStep,
  term: SheetTerm,
  kind: SheetSlipKind,
): readonly SheetTerm[] {
  const { terms } = step;
  const put = (one: Partial<SheetTerm>): readonly SheetTerm[] =>
    terms.map((own) => (own === term ? { ...own, ...one } : own));
  const times = (by: number): Partial<SheetTerm> => ({
    size: term.size * by,
    text: term.text.replace(/[\d.]+/u, (size) => figures(Number(size) * by, 5)),
  });
  switch (kind) {
    case 'sign':
      return put({ sign: term.sign === 1 ? -1 : 1 });
    case 'missing-term':
      return terms.filter((one) => one !== term);
    case 'extra-term':
      return [...terms, { ...term, ...times(0.431) }];
    case 'magnitude':
      return put(times(1.23));
    case 'unit':
      return put(times(12));
    case 'no-unit':
      return put({ text: term.text.replace(/ (?:kip|kN)(?:·ft|·m)?/u, '') });
    case 'carried':
      return put({ outBy: 1.17 });
    case 'lever-arm':
      return put(longerArm(term));
    case 'arithmetic':
    case 'rounding':
      return terms;
  }
}

function longerArm({ factor, text }: SheetTerm): Partial<SheetTerm> {
  const longer = text.replace(
    /([\d.]+)( (?:ft|m)\)?)$/u,
    (_, size: string, unit: string) => `${figures(Number(size) * 1.37, 5)}${unit}`,
  );
  return { factor: factor * 1.37, text: longer };
}
