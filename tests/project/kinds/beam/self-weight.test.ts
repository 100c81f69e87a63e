import { describe, expect, test } from 'vitest';
import { soundBeam } from '../../../support/folder.ts';

describe("a beam's own weight", () => {
  test("is the section's weight where that is given", () => {
    const { loads, selfWeight } = soundBeam({
      self_weight: 'D',
      section: '{ weight: 26 plf, A: 7.65 in^2 }',
      material: 'A992',
    });
    expect(selfWeight).toBe('D');
    expect(loads).toMatchObject([
      {
        case: 'D',
        kind: 'distributed',
        start: { point: 'A' },
        end: { point: 'C' },
        sizes: [{ text: '26' }, { text: '26' }],
        direction: { degrees: 270 },
        from: { kind: 'self-weight', weight: { text: '26' }, how: 'section-weight' },
      },
    ]);
  });

  test('is area times density otherwise', () => {
    const { loads } = soundBeam({
      self_weight: 'D',
      section: '{ A: 7.2 in^2 }',
      material: '{ density: 490 pcf }',
    });
    // 7.2 in² / 144 × 490 pcf = 24.5 lb/ft
    expect(loads).toMatchObject([
      {
        sizes: [{ text: '0.0245' }, {}],
        from: { how: 'area-times-density', weight: { text: '0.0245' } },
      },
    ]);
  });

  test('changes with the cross-section', () => {
    const { loads } = soundBeam({
      self_weight: 'D',
      sections:
        '[ { from: A, to: B, section: { weight: 26 plf } }, { from: B, to: C, section: { weight: 14 plf } } ]',
    });
    expect(
      loads.map(
        (load) => load.kind === 'distributed' && [load.start.point, load.sizes[0].text],
      ),
    ).toEqual([
      ['A', '26'],
      ['B', '14'],
    ]);
  });

  test('is left out where it is not asked for', () => {
    expect(soundBeam({ section: '{ weight: 26 plf }' }).loads).toEqual([]);
  });
});
