import { describe, expect, test } from 'vitest';
import { soundBeam } from '../../../support/folder.ts';

const project = `project: { title: Weir crossing }
units: us
sections: { plate: { I: 100 in^4, A: 5 in^2 }, W12x26: { I: 1 in^4 } }
materials: { larch: { E: 1600 ksi } }
`;

describe('the cross-section of a beam', () => {
  test('stands for the whole beam, by its values', () => {
    const { sections } = soundBeam({
      section:
        '{ I: 204 in^4, S: 33.4 in^3, A: 7.65 in^2, weight: 26 plf, depth: 12.2 in }',
    });
    expect(sections).toMatchObject([
      {
        from: { x: 0, point: 'A' },
        to: { point: 'C' },
        section: {
          I: { text: '204' },
          S: { text: '33.4' },
          A: { text: '7.65' },
          weight: { text: '26' },
          depth: { text: '12.2' },
        },
      },
    ]);
    expect(sections[0]?.section).not.toHaveProperty('name');
  });

  test('by a name of the project, which wins over the tables', () => {
    expect(
      soundBeam({ section: 'plate' }, { 'project.yaml': project }).sections,
    ).toMatchObject([{ section: { name: 'plate', I: { text: '100' } } }]);
    expect(
      soundBeam({ section: 'W12x26' }, { 'project.yaml': project }).sections,
    ).toMatchObject([{ section: { name: 'W12x26', I: { text: '1' } } }]);
  });

  test('by a designation of the tables, with their source', () => {
    expect(soundBeam({ section: 'w12 x 26' }).sections).toMatchObject([
      {
        section: {
          name: 'W12x26',
          I: { text: '204' },
          source: expect.stringMatching(/./),
        },
      },
    ]);
  });

  test('may change along the beam, stretches listed in any order', () => {
    const { sections } = soundBeam(
      {
        sections:
          '[ { from: B, to: C, section: plate }, { from: A, to: 6 ft, section: W12x26 } ]',
      },
      { 'project.yaml': project },
    );
    expect(sections).toMatchObject([
      { from: { point: 'A' }, to: { point: 'B' }, section: { name: 'W12x26' } },
      { from: { point: 'B' }, to: { point: 'C' }, section: { name: 'plate' } },
    ]);
  });
});

describe('the material of a beam', () => {
  test('is given by values, by a name of the project, or by a name of the tables', () => {
    const files = { 'project.yaml': project };
    expect(
      soundBeam({
        material: '{ E: 29000 ksi, density: 490 pcf, expansion: 6.5e-6 1/F }',
      }).material,
    ).toMatchObject({
      E: { text: '29000' },
      expansion: { text: '6.5e-6' },
    });
    expect(soundBeam({ material: 'larch' }, files).material).toMatchObject({
      name: 'larch',
      E: { text: '1600' },
    });
    expect(soundBeam({ material: 'A992' }, files).material).toMatchObject({
      name: 'A992',
      source: expect.stringMatching(/./),
    });
  });
});
