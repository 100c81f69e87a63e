import type { CombinationCase } from '../combination-case.ts';
import type { CombinationProblem, NamedSetRequest } from './named-set.ts';

/** The row of EN 1990 Table A1.1 that an action belongs to. */
export type PsiRow =
  'A' | 'B' | 'C' | 'D' | 'E' | 'F' | 'G' | 'H' | 'snow' | 'wind' | 'temperature';

/** Combination, frequent and quasi-permanent value factors of an action. */
export interface Psi {
  readonly psi0: number;
  readonly psi1: number;
  readonly psi2: number;
}

/**
 * EN 1990:2002 Table A1.1, recommended values (from memory). Snow is the row of sites up to
 * 1000 m above the sea outside Finland, Iceland, Norway and Sweden; others have 0.7, 0.5, 0.2.
 */
const recommendedPsi: Readonly<Record<PsiRow, readonly [number, number, number]>> = {
  A: [0.7, 0.5, 0.3], // domestic, residential
  B: [0.7, 0.5, 0.3], // offices
  C: [0.7, 0.7, 0.6], // congregation
  D: [0.7, 0.7, 0.6], // shopping
  E: [1.0, 0.9, 0.8], // storage
  F: [0.7, 0.7, 0.6], // vehicles up to 30 kN
  G: [0.7, 0.5, 0.3], // vehicles over 30 kN, up to 160 kN
  H: [0, 0, 0], // roofs
  snow: [0.5, 0.2, 0],
  wind: [0.6, 0.2, 0],
  temperature: [0.6, 0.5, 0],
};

/** Table A1.2(B), STR, recommended values (from memory); xi belongs to 6.10b. */
const recommendedGamma = { gamma_G_sup: 1.35, gamma_G_inf: 1, gamma_Q: 1.5, xi: 0.85 };

/** Factors of EN 1990, recommended or as a nation has determined them. */
export interface En1990Values {
  readonly permanentHigh: number;
  readonly permanentLow: number;
  readonly variable: number;
  /** Reduces the unfavourable permanent factor in 6.10b. */
  readonly xi: number;
  readonly psi: Readonly<Record<PsiRow, Psi>>;
}

const rows = Object.keys(recommendedPsi) as readonly PsiRow[];

/** Names that `national` knows: `gamma_G_sup`, `gamma_Q`, `xi`, `psi0_A`, `psi1_snow` … */
export const nationalValueNames: readonly string[] = [
  ...Object.keys(recommendedGamma),
  ...rows.flatMap((row) => [`psi0_${row}`, `psi1_${row}`, `psi2_${row}`]),
];

/** The values that a request works with: recommended ones, overlaid with the nation's. */
export function en1990Values(request: NamedSetRequest): En1990Values {
  const national = request.national ?? {};
  const value = (name: string, recommended: number): number =>
    national[name] ?? recommended;
  const psi = rows.map((row) => {
    const [psi0, psi1, psi2] = recommendedPsi[row];
    return [
      row,
      {
        psi0: value(`psi0_${row}`, psi0),
        psi1: value(`psi1_${row}`, psi1),
        psi2: value(`psi2_${row}`, psi2),
      },
    ] as const;
  });
  return {
    permanentHigh: value('gamma_G_sup', recommendedGamma.gamma_G_sup),
    permanentLow: value('gamma_G_inf', recommendedGamma.gamma_G_inf),
    variable: value('gamma_Q', recommendedGamma.gamma_Q),
    xi: value('xi', recommendedGamma.xi),
    psi: Object.fromEntries(psi) as Record<PsiRow, Psi>,
  };
}

/** Mistakes among national values: names that are not known, and numbers that no factor can be. */
export function checkNational(request: NamedSetRequest): readonly CombinationProblem[] {
  return Object.entries(request.national ?? {}).flatMap(([name, value]) => {
    const message = !nationalValueNames.includes(name)
      ? `${name} is no national value of EN 1990; names are gamma_G_sup, gamma_G_inf, gamma_Q, xi and psi0_A to psi2_temperature`
      : Number.isFinite(value) && value >= 0 && value <= 10
        ? undefined
        : `${name} must be a number from 0 to 10`;
    return message === undefined
      ? []
      : [{ kind: 'national-value', subject: request.name, message } as const];
  });
}

/** The row of Table A1.1 that a case belongs to; absent for one that names no category, or an unknown one. */
export function psiRowOf(entry: CombinationCase): PsiRow | undefined {
  const { kind } = entry;
  if (kind === 'snow' || kind === 'wind' || kind === 'temperature') return kind;
  if (kind !== 'live' && kind !== 'roof-live') return undefined;
  const category = entry.category?.trim().toUpperCase();
  return rows.find((row) => row === category);
}
