import type { Asce7Edition } from './asce7-edition.ts';
import { asce7NamedSet } from './asce7-set.ts';
import { take, type Clause, type ClauseTerm } from './clause.ts';
import { tidyFactor } from './factored-case.ts';
import type { NamedSet } from './named-set.ts';

/**
 * Allowable stress combinations: ASCE/SEI 7-22, 7-16 and 7-10 2.4.1, clauses (1) to (7). Their
 * loads are at service level, so they go to the service envelope and never beside 1.6L.
 *
 * The terms in D, L, Lr and W agree with a published list of the 7-10 combinations. Snow, rain
 * and the exceptions for F and H are from memory of the standard, as is the whole 7-22 list.
 */
export const asce7Allowable: NamedSet = asce7NamedSet({
  name: 'asce7-allowable',
  for: 'service',
  section: { '7-10': '2.4.1', '7-16': '2.4.1', '7-22': '2.4.1' },
  clauses: allowableClauses,
  elsewhere: (edition) => ({
    seismic: edition === '7-10' ? '2.4.1 (5), (6b) and (8)' : '2.4.5',
    temperature: '2.4.4',
    settlement: '2.4.4',
  }),
  notes: () => [],
});

function allowableClauses(edition: Asce7Edition): readonly Clause[] {
  // F takes the factor of D in (1) to (6), H takes 1.0 where it adds: exceptions of the section
  // from memory, placed as in IBC 1605.3.1 (2012 text, seen), which has no H in (1) and no F in (7).
  const dead: readonly ClauseTerm[] = [take('dead', 1), take('fluid', 1)];
  const earth: ClauseTerm = { ...take('earth', 1), orLeftOut: true };
  // 7-22 maps snow at strength level (7.2); 0.7 brings it back to service level.
  const snow = edition === '7-22' ? 0.7 : 1;
  const roof = (factor: number): ClauseTerm => ({
    oneOf: [
      { kind: 'roof-live', factor },
      { kind: 'snow', factor: tidyFactor(factor * snow) },
      { kind: 'rain', factor },
    ],
  });
  // 0.75 (0.6W) of clause (6).
  const windBeside = take('wind', tidyFactor(0.75 * 0.6));
  return [
    { number: '1', terms: dead },
    { number: '2', terms: [...dead, take('live', 1), earth] },
    { number: '3', terms: [...dead, roof(1), earth] },
    { number: '4', terms: [...dead, take('live', 0.75), roof(0.75), earth] },
    { number: '5', terms: [...dead, take('wind', 0.6), earth] },
    {
      number: edition === '7-10' ? '6a' : '6',
      terms: [...dead, take('live', 0.75), windBeside, roof(0.75), earth],
    },
    { number: '7', terms: [take('dead', 0.6), take('wind', 0.6), earth] },
  ];
}
