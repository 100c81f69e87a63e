import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareWith } from '../../../src/derivation/handbook/compare.ts';
import { findHandbookCase } from '../../../src/derivation/handbook/find-case.ts';
import { handbookCases } from '../../../src/derivation/handbook/handbook-cases.ts';
import { workFormulas } from '../../../src/derivation/handbook/work-formulas.ts';
import type { Quantity } from '../../../src/derivation/handbook/handbook-case.ts';
import {
  solveBeam,
  type BeamStructure,
  type Load,
  type Support,
} from '../../../src/statics/index.ts';
import {
  bySingularities,
  type BySingularities,
  type PlainBeam,
} from '../../support/by-singularities.ts';
import {
  handbookBeams,
  mirroredBeam,
  turnedBeam,
  type Draw,
} from '../../support/handbook-beams.ts';

const origin = 3;

function structureOf({ length, EI, supports, loads }: PlainBeam): BeamStructure {
  const stations = [...new Set([0, ...supports.map(({ at }) => at), length])].sort(
    (a, b) => a - b,
  );
  const nameAt = (at: number): string => `P${stations.indexOf(at)}`;
  return {
    kind: 'beam',
    points: stations.map((at) => ({ name: nameAt(at), x: origin + at })),
    supports: supports.map(({ at, holds, settlement }, index): Support => ({
      point: nameAt(at),
      x: origin + at,
      type: holds === 'fixed' ? 'fixed' : index === 0 ? 'pin' : 'roller',
      restraints: [
        ...(index === 0 ? [{ kind: 'force', direction: [1, 0] } as const] : []),
        {
          kind: 'force',
          direction: [0, 1],
          ...(settlement === undefined
            ? {}
            : { settlements: [{ case: 'Q', value: settlement }] }),
        },
        ...(holds === 'fixed' ? [{ kind: 'moment' } as const] : []),
      ],
    })),
    hinges: [],
    cases: ['Q'],
    stiffness: [{ from: origin, to: origin + length, EI }],
    loads: loads.map((load, index): Load => {
      const head = { id: `l${index}`, case: 'Q' };
      if (load.kind === 'spread')
        return {
          ...head,
          kind: 'distributed',
          from: origin + load.from,
          to: origin + load.to,
          x1: 0,
          x2: 0,
          y1: -load.start,
          y2: -load.end,
        };
      return load.kind === 'point'
        ? { ...head, kind: 'point', x: origin + load.at, fx: 0, fy: -load.size }
        : { ...head, kind: 'couple', x: origin + load.at, m: load.size };
    }),
  };
}

const draws: fc.Arbitrary<Draw> = fc.record({
  span: fc.integer({ min: 4, max: 20 }).map((n) => 0.6 * n),
  other: fc.integer({ min: 15, max: 140 }).map((n) => n / 10),
  load: fc.double({ min: 0.5, max: 40, noNaN: true }),
  load2: fc.double({ min: 41, max: 80, noNaN: true }),
  share: fc.double({ min: 0.1, max: 0.45, noNaN: true }),
  share2: fc.double({ min: 0.1, max: 0.45, noNaN: true }),
  EI: fc.double({ min: 200, max: 9e4, noNaN: true }),
});

/** What the other computation says of a figure that a formula gives. */
function independently(
  other: BySingularities,
  beam: PlainBeam,
  { gives, at }: { readonly gives: Quantity; readonly at: number | undefined },
): readonly number[] {
  switch (gives.kind) {
    case 'reaction':
      return gives.supports.map((index) => other.reactions[index]!);
    case 'support-moment':
      return gives.supports.map((index) => {
        const place = beam.supports[index]!.at;
        // The curve counts just right of a station; a support at the far end is read just inside.
        return other.moment(Math.min(place, beam.length * (1 - 1e-12)));
      });
    case 'moment':
      return [other.moment(at!)];
    case 'greatest-shear':
      return [Math.max(other.greatest('shear'), -other.least('shear'))];
    case 'deflection':
      return [other.deflection(at!)];
    case 'extreme':
      return [other[gives.end](gives.of)];
  }
}

function expectNear(one: number, other: number, scale: number, what: string): void {
  expect(Math.abs(one - other), `${what}: ${one} against ${other}`).toBeLessThanOrEqual(
    1e-9 * scale,
  );
}

test('there are at least forty cases, each by its own name, and a beam for each', () => {
  const titles = handbookCases.map(({ title }) => title);
  expect(titles.length).toBeGreaterThanOrEqual(40);
  expect(new Set(titles).size).toBe(titles.length);
  expect(Object.keys(handbookBeams).sort()).toEqual([...titles].sort());
});

describe.each(handbookCases.map(({ title }) => title))('%s', (title) => {
  test('is known from its definition and agrees with two independent computations, from either end and turned round', () => {
    fc.assert(
      fc.property(draws, fc.boolean(), fc.boolean(), (draw, isMirrored, isTurned) => {
        const plain = { ...handbookBeams[title]!(draw), EI: draw.EI };
        const faced = isMirrored ? mirroredBeam(plain) : plain;
        const structure = structureOf(isTurned ? turnedBeam(faced) : faced);
        const fit = findHandbookCase(structure, 'Q');
        expect(fit?.of.title).toBe(title);
        const worked = workFormulas(fit!, { E: draw.EI / 2, I: 2 });
        expect(worked).toHaveLength(fit!.of.formulas.length);

        const outcome = solveBeam(structure);
        if (outcome.kind !== 'beam') throw new Error(outcome.unsolved.reason);
        const compared = compareWith(fit!, worked, outcome.results[0]!);
        expect(compared).toHaveLength(worked.length);
        for (const { si, found, scale, worked: of } of compared)
          for (const one of found)
            expectNear(si, one, scale, `solver, ${of.formula.gives.kind}`);

        // The second way works the figure of the tables, or that seen from its other end where the fit is seen so.
        const drawn = fit!.view.mirrored === isMirrored ? plain : mirroredBeam(plain);
        const shown =
          fit!.view.sense === (isTurned ? -1 : 1) ? drawn : turnedBeam(drawn);
        const other = bySingularities(shown);
        for (const [index, { formula, si, at }] of worked.entries()) {
          const { scale } = compared[index]!;
          for (const one of independently(other, shown, { gives: formula.gives, at }))
            expectNear(si, one, scale, `singularities, ${formula.gives.kind}`);
        }
      }),
      { numRuns: 16 },
    );
  });
});
