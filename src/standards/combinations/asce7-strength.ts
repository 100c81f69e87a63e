import type { CaseKind } from '../combination-case.ts';
import type { Asce7Edition } from './asce7-edition.ts';
import { asce7NamedSet } from './asce7-set.ts';
import { take, type Clause, type ClauseTerm } from './clause.ts';
import type { NamedSet, SetNote } from './named-set.ts';

/**
 * Strength combinations: ASCE/SEI 7-22 and 7-16 2.3.1, 7-10 2.3.2, clauses (1) to (5).
 *
 * The terms in D, L, Lr and W agree with a published list of the 7-10 combinations. Snow, rain
 * and the exceptions for F and H are from memory of the standard, as is the whole 7-22 list.
 */
export const asce7Strength: NamedSet = asce7NamedSet({
  name: 'asce7-strength',
  for: 'strength',
  section: { '7-10': '2.3.2', '7-16': '2.3.1', '7-22': '2.3.1' },
  clauses: strengthClauses,
  elsewhere: (edition) => ({
    seismic: edition === '7-10' ? '2.3.2 (5) and (7)' : '2.3.6',
    temperature: edition === '7-10' ? '2.3.5' : '2.3.4',
    settlement: edition === '7-10' ? '2.3.5' : '2.3.4',
  }),
  notes: strengthNotes,
});

function strengthClauses(edition: Asce7Edition): readonly Clause[] {
  // F takes the factor of D, H takes 1.6 where it adds to a variable load and so is absent from (1): exceptions of the
  // section from memory, placed as in IBC 1605.2 (2012 text, seen). That text has no F beside 0.9D + 1.0W; later
  // numbering reads as if it had, so that (5) stands both ways.
  const dead = (factor: number): readonly ClauseTerm[] => [
    take('dead', factor),
    take('fluid', factor),
  ];
  const earth: ClauseTerm = { ...take('earth', 1.6), orLeftOut: true };
  // 7-22 maps snow at strength level (7.2), so that its factors fell from 1.6 and 0.5 to 1.0 and 0.3.
  const snow =
    edition === '7-22' ? { lead: 1.0, beside: 0.3 } : { lead: 1.6, beside: 0.5 };
  const roof = (factors: readonly [roofLive: number, snow: number, rain: number]) => ({
    oneOf: [
      { kind: 'roof-live', factor: factors[0] },
      { kind: 'snow', factor: factors[1] },
      { kind: 'rain', factor: factors[2] },
    ] as const,
  });
  const roofBeside = roof([0.5, snow.beside, 0.5]);
  const liveOrWind: ClauseTerm = {
    oneOf: [
      { kind: 'live', factor: 1 },
      { kind: 'wind', factor: 0.5 },
    ],
  };
  return [
    { number: '1', terms: dead(1.4) },
    { number: '2', terms: [...dead(1.2), take('live', 1.6), roofBeside, earth] },
    {
      number: '3',
      terms: [...dead(1.2), roof([1.6, snow.lead, 1.6]), liveOrWind, earth],
    },
    {
      number: '4',
      terms: [...dead(1.2), take('wind', 1), take('live', 1), roofBeside, earth],
    },
    // In 7-10 the earthquake clauses stand between: (6) there is 0.9D + 1.0W.
    {
      number: edition === '7-10' ? '6' : '5',
      terms: [
        take('dead', 0.9),
        { ...take('fluid', 0.9), orLeftOut: true },
        take('wind', 1),
        earth,
      ],
    },
  ];
}

function strengthNotes(kinds: ReadonlySet<CaseKind>): readonly SetNote[] {
  if (!kinds.has('live')) return [];
  const text =
    'Live load keeps its factor of 1.0 beside roof loads and wind; the reduction to 0.5 that the standard permits for light occupancies is not used.';
  return [{ kind: 'assumption', text }];
}
