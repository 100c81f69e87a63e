import { describe, expect, test } from 'vitest';
import { mapStatements, statementsOf } from '../../src/derivation/map-statements.ts';
import { derivedBeam } from '../support/derived.ts';

const { derivation } = derivedBeam({
  loads: '[ { point: 8 kip, at: B }, { uniform: 0.5 kip/ft } ]',
});
const steps = derivation.sections.flatMap((section) => section.steps);

describe('mapStatements', () => {
  test('leaves a step as it is where nothing changes', () => {
    for (const step of steps)
      expect(mapStatements(step, (statement) => statement)).toBe(step);
  });

  test('changes every statement, however deep, and nothing else', () => {
    for (const step of steps) {
      const marked = mapStatements(step, ({ lines }) => ({
        lines: [...lines, { chain: [] }],
      }));
      expect(statementsOf(marked).map(({ lines }) => lines.length)).toEqual(
        statementsOf(step).map(({ lines }) => lines.length + 1),
      );
      expect(marked.kind).toBe(step.kind);
    }
  });
});

describe('statementsOf', () => {
  test('finds both lines of a sum, but no labels of drawings', () => {
    expect(statementsOf(steps.find(({ kind }) => kind === 'sum')!)).toHaveLength(2);
    expect(statementsOf(steps.find(({ kind }) => kind === 'figure')!)).toEqual([]);
  });
});
