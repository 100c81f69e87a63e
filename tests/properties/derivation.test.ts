import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deriveBeam, runChecks } from '../../src/derivation/index.ts';
import { statementsOf } from '../../src/derivation/map-statements.ts';
import {
  evaluate,
  lineToLinear,
  recheck,
  toTex,
  type Expression,
  type Statement,
} from '../../src/equation/index.ts';
import type { BeamResult } from '../../src/statics/index.ts';
import { folderOf } from '../support/beam-file.ts';
import { claimed, derivedFolder, type Derived } from '../support/derived.ts';
import { determinateBeam } from '../support/random-beam.ts';

// One seed gives every property below the same beams: each is derived once.
const derivedBefore = new Map<string, Derived>();

/** Any statically determinate beam, through the files that describe it. */
const anyBeam: fc.Arbitrary<Derived> = determinateBeam.map((structure) => {
  const folder = folderOf(structure);
  const key = JSON.stringify(folder);
  const derived = derivedBefore.get(key) ?? derivedFolder(folder);
  derivedBefore.set(key, derived);
  return derived;
});

function statements({ derivations }: Derived): readonly Statement[] {
  return derivations.flatMap(({ sections }) =>
    sections.flatMap(({ steps }) => steps.flatMap(statementsOf)),
  );
}

/** The printed relations of a statement whose two sides have values of their own. */
function* relations({ lines }: Statement): Generator<{
  readonly line: string;
  readonly from: Expression;
  readonly to: Expression;
}> {
  let last: Expression | undefined;
  for (const line of lines) {
    let from = line.left ?? last;
    for (const { sign, of } of line.chain) {
      if (from !== undefined && sign === '=' && line.recheck !== 'none')
        yield { line: lineToLinear(line), from, to: of };
      from = of;
    }
    last = from;
  }
}

function valueOf(of: Expression): number | undefined {
  try {
    return evaluate(of).si;
  } catch {
    // A symbol or a heading: the relation says what it stands for.
    return undefined;
  }
}

/** The sizes that go into an expression: what rounding is measured against. */
function scaleOf(of: Expression): number {
  if (of.kind === 'figure') return Math.abs(of.quantity.si);
  if (of.kind === 'sum')
    return of.terms.reduce((all, term) => all + scaleOf(term.of), 0);
  if (of.kind === 'product')
    return of.factors.reduce((all, factor) => all * scaleOf(factor), 1);
  if (of.kind === 'quotient')
    return scaleOf(of.over) / Math.abs(valueOf(of.under) ?? 1);
  return Math.abs(valueOf(of) ?? 0);
}

const runs = { numRuns: 15 };

describe('the derivation of any determinate beam', { timeout: 120_000 }, () => {
  test('never throws, and every check holds on the true result', () => {
    fc.assert(
      fc.property(anyBeam, ({ project, works }) => {
        for (const work of works) {
          expect(deriveBeam(project, work)).toHaveProperty('derivation');
          for (const result of work.solution.results) {
            const failed = runChecks(claimed(project, work, result)).filter(
              ({ holds }) => !holds,
            );
            expect(failed).toEqual([]);
          }
        }
      }),
      runs,
    );
  });

  test('prints equalities that are true of the carried values', () => {
    fc.assert(
      fc.property(anyBeam, (derived) => {
        for (const statement of statements(derived)) {
          for (const { line, from, to } of relations(statement)) {
            const [left, right] = [valueOf(from), valueOf(to)];
            if (left === undefined || right === undefined) continue;
            const scale = Math.max(scaleOf(from), scaleOf(to));
            expect(Math.abs(left - right), line).toBeLessThanOrEqual(1e-7 * scale);
          }
        }
      }),
      runs,
    );
  });

  test('prints equalities that hold when worked again from the page, or says that they are carried unrounded', () => {
    fc.assert(
      fc.property(anyBeam, (derived) => {
        for (const statement of statements(derived)) {
          for (const { agrees, line } of recheck(statement)) {
            const said = statement.lines[line];
            const text = said === undefined ? '' : lineToLinear(said);
            expect(agrees || said?.margin === 'carried unrounded', text).toBe(true);
          }
        }
      }),
      runs,
    );
  });

  test('prints nothing that cannot be set: no number that is none, no minus zero', () => {
    fc.assert(
      fc.property(anyBeam, (derived) => {
        for (const { lines } of statements(derived)) {
          for (const line of lines) {
            const text = lineToLinear(line);
            expect(text).not.toMatch(/NaN|Infinity|undefined|(^|[=(] )−0(\.0*)? /);
            for (const { of } of line.chain) expect(toTex(of)).not.toBe('');
          }
        }
      }),
      runs,
    );
  });

  test('any single reaction or hinge force that is altered is caught', () => {
    fc.assert(
      fc.property(
        anyBeam,
        fc.nat(),
        fc.constantFrom(1.001, 0.5, -1),
        ({ project, works }, pick, factor) => {
          for (const work of works) {
            for (const result of work.solution.results) {
              const altered = alterOne(result, pick, factor);
              if (altered === undefined) continue;
              const outcomes = runChecks(claimed(project, work, altered));
              expect(outcomes.some(({ holds }) => !holds)).toBe(true);
            }
          }
        },
      ),
      runs,
    );
  });
});

/** The result with one of its forces multiplied, its parts along the axes following; undefined where it has none. */
function alterOne(
  result: BeamResult,
  pick: number,
  factor: number,
): BeamResult | undefined {
  const { reactions, hingeForces } = result;
  const sizes = [
    ...reactions.flatMap(({ components }, support) =>
      components.map((size, index) => ({ size, support, index })),
    ),
    ...hingeForces.flatMap(({ x, y }, hinge) => [
      { size: x, hinge, axis: 'x' as const },
      { size: y, hinge, axis: 'y' as const },
    ]),
  ];
  const greatest = Math.max(0, ...sizes.map(({ size }) => Math.abs(size)));
  // Noise beside the other forces is no force that a check could miss.
  const real = sizes.filter(({ size }) => Math.abs(size) > 1e-3 * greatest);
  const chosen = real[pick % Math.max(1, real.length)];
  if (chosen === undefined) return undefined;
  if ('hinge' in chosen) {
    return {
      ...result,
      hingeForces: hingeForces.map((force, index) =>
        index === chosen.hinge
          ? { ...force, [chosen.axis]: force[chosen.axis] * factor }
          : force,
      ),
    };
  }
  return {
    ...result,
    reactions: reactions.map((reaction, support) =>
      support === chosen.support
        ? {
            ...reaction,
            components: reaction.components.map((c, index) =>
              index === chosen.index ? c * factor : c,
            ),
          }
        : reaction,
    ),
  };
}
