import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MarkedStep } from '../../src/review/index.ts';
import type { BeamStructure } from '../../src/statics/index.ts';
import { determinateBeam } from '../support/random-beam.ts';
import { lineSum, type LineSum, type LineTerm } from './any-line/line-terms.ts';
import { lineMarker } from './any-line/marked-line.ts';
import { plantedKinds, plantSlip } from './any-line/plant-slip.ts';
import { lumped, styles, written, type Style } from './any-line/write-line.ts';

/** Sums of whole beams and of pieces between two cuts. */
const sums = fc.record({
  isForces: fc.boolean(),
  about: fc.nat(20),
  isPart: fc.boolean(),
  ends: fc.tuple(fc.nat(1000), fc.nat(1000)),
  splits: fc.nat(255),
});

type Asked = typeof sums extends fc.Arbitrary<infer T> ? T : never;

interface Desk {
  readonly sum: LineSum;
  readonly mark: (terms: readonly LineTerm[]) => {
    readonly line: string;
    readonly step: MarkedStep;
  };
}

/** A sum of a beam, and what marks a line written for it; undefined where there is too little to write. */
function deskOf(
  structure: BeamStructure,
  asked: Asked,
  style: Style,
): Desk | undefined {
  const marker = lineMarker(structure);
  const sum = marker === undefined ? undefined : lineSum(marker.context, asked);
  if (marker === undefined || sum === undefined || sum.terms.length < 2)
    return undefined;
  const part = sum.part === undefined ? '' : `part: ${sum.part}, `;
  const turn = style.isClockwise ? 'clockwise' : 'counterclockwise';
  const head = `member: B1\nloads: ${marker.mark}\nsigns: { moments: ${turn} }\nnames: { ${sum.names.join(', ')} }\n`;
  return {
    sum,
    mark: (terms) => {
      const line = written(terms, style, asked.isForces);
      const [step] = marker.steps(
        `${head}steps:\n  - { sum: ${sum.claim}, ${part}write: ${JSON.stringify(line)} }\n`,
      );
      return { line, step: step! };
    },
  };
}

function told(line: string, { claim, part, verdict, findings }: MarkedStep): string {
  const said = findings.map(({ kind, message }) => `${kind}: ${message}`);
  return `${claim} ${part ?? ''} ${line}\n${verdict} ${said.join('\n')}`;
}

describe('any line of any determinate beam', () => {
  test('is right in every legitimate style, of the whole beam and of any piece', () => {
    let marked = 0;
    fc.assert(
      fc.property(determinateBeam, sums, styles, (structure, asked, style) => {
        const desk = deskOf(structure, asked, style);
        if (desk === undefined) return;
        const { line, step } = desk.mark(lumped(desk.sum.terms, style));
        marked += 1;
        expect(step.verdict, told(line, step)).toBe('right');
      }),
      { numRuns: 40, endOnFailure: true },
    );
    expect(marked).toBeGreaterThan(20);
  });

  test('with one slip is wrong, and the slip is named in at least 95 of 100', () => {
    const counts = { planted: 0, named: 0, alone: 0 };
    const unnamed: string[] = [];
    fc.assert(
      fc.property(
        determinateBeam,
        sums,
        styles,
        fc.constantFrom(...plantedKinds),
        (structure, asked, style, slip) => {
          const desk = deskOf(structure, asked, style);
          const planted =
            desk === undefined
              ? undefined
              : plantSlip(desk.sum.terms, slip, style.pick);
          if (desk === undefined || planted === undefined) return;
          const { line, step } = desk.mark(planted.terms);
          counts.planted += 1;
          expect(step.verdict, `${slip}: ${told(line, step)}`).toBe('wrong');
          const isNamed = step.findings.some(({ kind }) => kind === planted.kind);
          counts.named += isNamed ? 1 : 0;
          counts.alone += isNamed && step.findings.length === 1 ? 1 : 0;
          if (!isNamed) unnamed.push(`${slip}: ${told(line, step)}`);
        },
      ),
      { numRuns: 90, endOnFailure: true },
    );
    const { planted, named, alone } = counts;
    const rates = `${planted} slips planted, ${named} named, ${alone} with nothing beside`;
    expect(planted, rates).toBeGreaterThan(35);
    expect(named / planted, [rates, ...unnamed].join('\n')).toBeGreaterThanOrEqual(
      0.95,
    );
  });
});
