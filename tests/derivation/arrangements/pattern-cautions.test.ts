import { describe, expect, test } from 'vitest';
import { derivedBeam, siProject } from '../../support/derived.ts';

function cautions(
  cases: string,
  rest: Readonly<Record<string, string>> = {},
): readonly string[] {
  const { derivation } = derivedBeam(
    {
      points: '{ A: 0 m, B: 10 m, C: 14 m }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { case: L, uniform: 2 kN/m } ]',
      ...rest,
    },
    { 'project.yaml': siProject, 'loads.yaml': `cases: { ${cases} }\n` },
  );
  return derivation.sections.flatMap(({ steps }) =>
    steps.flatMap((step) =>
      step.kind === 'caution' && step.caution === 'pattern'
        ? [step.facts.case ?? '']
        : [],
    ),
  );
}

describe('live load that is worked only as it is placed', () => {
  test('is a caution on a beam with an overhang or several spans', () => {
    expect(cautions('L: { kind: live }')).toEqual(['L']);
  });

  test('is none where the case asks for patterns', () => {
    expect(cautions('L: { kind: live, pattern: true }')).toEqual([]);
  });

  test('is none on a single span, for other kinds of load, and where none of it stands', () => {
    expect(
      cautions('L: { kind: live }', {
        points: '{ A: 0 m, B: 10 m }',
        loads: '[ { case: L, uniform: 2 kN/m } ]',
      }),
    ).toEqual([]);
    expect(cautions('L: { kind: snow }')).toEqual([]);
    expect(cautions('L: { kind: live, pattern: true }, K: { kind: live }')).toEqual([]);
  });
});
