import fc from 'fast-check';
import type { BeamStructure } from '../../../src/statics/index.ts';
import { continuous, down, spread } from './continuous.ts';

const length = fc.integer({ min: 5, max: 80 }).map((n) => n / 10);

/** Continuous beams of two to six spans with any ends, loads of every kind anywhere, stepped or not, sinking, warm. */
export function anyContinuous(): fc.Arbitrary<BeamStructure> {
  return fc
    .record({
      spans: fc.array(length, { minLength: 2, maxLength: 6 }),
      left: fc.constantFrom('simple', 'fixed', 'overhang'),
      right: fc.constantFrom('simple', 'fixed', 'overhang'),
      overhang: length,
      loads: fc.array(
        fc.record({
          kind: fc.constantFrom('point', 'couple', 'uniform', 'varying'),
          at: fc.constantFrom(0, 0.1, 0.25, 0.5, 0.61, 0.9, 1),
          to: fc.constantFrom(0.2, 0.5, 0.77, 1),
          size: fc.integer({ min: -20, max: 40 }),
          other: fc.integer({ min: -20, max: 40 }),
          atSupport: fc.option(fc.nat(6)),
        }),
        { maxLength: 6 },
      ),
      sinks: fc.array(fc.constantFrom(0, 0, 0.01, -0.02), { maxLength: 8 }),
      steps: fc.array(
        fc.record({
          at: fc.integer({ min: 1, max: 99 }),
          EI: fc.integer({ min: 500, max: 50_000 }),
        }),
        { maxLength: 3 },
      ),
      warm: fc.option(
        fc.record({
          from: fc.constantFrom(0, 0.3),
          curvature: fc.constantFrom(-1e-3, 2e-3),
        }),
      ),
    })
    .map((of) => {
      const outer = { left: of.left === 'overhang', right: of.right === 'overhang' };
      const lengths = [
        ...(outer.left ? [of.overhang] : []),
        ...of.spans,
        ...(outer.right ? [of.overhang] : []),
      ];
      const stations = lengths.reduce<number[]>(
        (all, one) => [...all, Math.round(((all.at(-1) ?? 0) + one) * 10) / 10],
        [0],
      );
      const whole = stations.at(-1) ?? 1;
      const inner = 'r'.repeat(of.spans.length - 1);
      const end = (kind: string): string => (kind === 'fixed' ? 'f' : 'r');
      const letters = `${outer.left ? '-' : ''}${of.left === 'fixed' ? 'f' : 'p'}${inner}${end(of.right)}${outer.right ? '-' : ''}`;
      const cuts = [...new Set(of.steps.map(({ at }) => (whole * at) / 100))].sort(
        (a, b) => a - b,
      );
      const bounds = [0, ...cuts, whole];
      return continuous({
        stations,
        supports: letters,
        sinks: of.sinks,
        stiffness: bounds.slice(1).map((to, index) => ({
          from: bounds[index] ?? 0,
          to,
          EI: of.steps[index]?.EI ?? 8000,
        })),
        ...(of.warm === null
          ? {}
          : {
              curvatures: [
                {
                  id: 't',
                  case: 'L',
                  from: whole * of.warm.from,
                  to: whole,
                  curvature: of.warm.curvature,
                },
              ],
            }),
        loads: of.loads.map(({ kind, at, to, size, other, atSupport }) => {
          const x = atSupport === null ? at * whole : (stations[atSupport] ?? whole);
          const far = Math.max(to, at + 0.05 > 1 ? 1 : at + 0.05) * whole;
          const near = Math.min(at, 0.9) * whole;
          switch (kind) {
            case 'point':
              return down(size, x);
            case 'couple':
              return { kind: 'couple', x, m: size } as const;
            case 'uniform':
              return spread(size, size, near, far);
            case 'varying':
              return spread(size, other, near, far);
          }
        }),
      });
    });
}
