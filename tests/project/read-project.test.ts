import { describe, expect, test } from 'vitest';
import { readFolder, soundFolder, beamYaml } from '../support/folder.ts';

const project = `
project:
  number: "2031-014"
  title: Millrace Footbridge
  discipline: structural
  client: Town of Ostrava Ferry
  location: Weir Lane
  office: Fernhill Structural
  stage: permit
  status: for review
  supersedes: { number: "2031-014", revision: "-", bag: ../issued/2031-014-0.zip }
people:
  prepared: { name: A. Quill, initials: AQ, date: 2031-03-14 }
  checked:  { name: R. Tamsin, initials: RT }
  approved: { name: L. Hark, initials: LH, licence: "PE 00000" }
revisions:
  - { mark: A, date: 2031-03-14, note: First issue, reason: For review, prepared: AQ, checked: RT, sheets: all }
units: us
lengths: feet-inches
paper: a4
figures: 3
conventions:
  moments: clockwise
  horizontal: left
  vertical: down
  moment_diagram: tension
criteria:
  standards: [ "ASCE/SEI 7-22", "ANSI/AISC 360-22" ]
  deflection_limits: { L: L/360, D+L: L/240, 0.5D + L: 0.75 in, cantilevers: plain }
  design_loads:
    - { item: Ground snow, symbol: Pg, value: 25 psf, source: "ASCE 7-22 ch. 7", level: strength }
assumptions:
  - { id: A1, text: Connections at both bearings are free to rotate., basis: detail S-301/4, confirmed: false, track: RFI 12 }
references:
  - { id: R1, text: "Site measured survey, drawing S-02, rev 1" }
cautions: []
methods: { continuous: three-moment }
sheet_order: [ G1 ]
sections: { plate: { I: 100 in^4, A: 5 in^2, source: maker's list } }
materials: { larch: { E: 1600 ksi, density: 38 pcf } }
`;
const loads = `
cases:
  D: { title: Dead, kind: dead }
  L: { title: Pedestrian live, kind: live, source: "ASCE 7-22 Table 4.3-1" }
  W1: { kind: wind }
  W2: { kind: wind }
areas:
  deck: { D: 65 psf, L: 90 psf, source: "ASCE 7-22 Table 4.3-1" }
combinations: [ asce7-strength, asce7-allowable, { mark: "D + 0.5L", factors: { D: 1, L: 0.5 }, for: service } ]
alternatives: [ [ W1, W2 ] ]
`;
const stringer = `
mark: B10
title: Deck stringer
kind: beam
where: { level: deck, grid: "C / 2-3", drawing: S-201 }
typical: { count: 7, note: "also B2 to B7" }
points:   { A: 0 ft, B: 6 ft, C: 21 ft, D: +4 ft }
supports: { A: pin, C: roller }
hinges:   [ ]
loads:
  - { case: L, point: 8.4 kip, at: B }
  - { uniform: { D: 0.25 kip/ft, L: 0.40 kip/ft }, span: A-C }
  - { case: D, uniform: 0.25 kip/ft, from: A, to: C, note: Railing, uses: [ A1, R1 ] }
  - { area: deck, width: 8 ft 6 in, from: A, to: D }
self_weight: D
section:  { I: 204 in^4, S: 33.4 in^3, A: 7.65 in^2, weight: 26 plf }
material: { E: 29000 ksi, density: 490 pcf }
deflection_limits: { L: L/480 }
bracing: { top: continuous, bottom: [ A, C ] }
cautions: []
`;
const files = {
  'project.yaml': project,
  'loads.yaml': loads,
  'members/b10.yaml': stringer,
  'members/b2.yaml': beamYaml({
    mark: 'B2',
    loads: '[ { case: L, point: 1 kip, at: B } ]',
  }),
  'members/g1.yaml': beamYaml({ mark: 'G1', loads: '[ { reaction: B2.C, at: B } ]' }),
  'theme.yaml': 'text: { size: 11 }\ncolour: { accent: [ 0, 0, 0.5 ] }\n',
  'report-templates/cover.html': '<section></section>',
  'images/sketch.png': new Uint8Array([1, 2, 3]),
};

describe('a folder that uses all that project.yaml and loads.yaml know', () => {
  const read = soundFolder(files);

  test('keeps every value of project.yaml as it was given', () => {
    expect(read.definition).toMatchObject({
      number: '2031-014',
      title: 'Millrace Footbridge',
      discipline: { value: 'structural', origin: 'given' },
      status: { value: 'for review', origin: 'given' },
      supersedes: {
        number: '2031-014',
        revision: '-',
        bag: '../issued/2031-014-0.zip',
      },
      people: {
        prepared: { name: 'A. Quill', initials: 'AQ', date: '2031-03-14' },
        checked: { name: 'R. Tamsin', initials: 'RT' },
        approved: { licence: 'PE 00000' },
      },
      revisions: [{ mark: 'A', date: '2031-03-14', sheets: 'all' }],
      units: 'us',
      lengths: { value: 'feet-inches' },
      paper: { value: 'a4', origin: 'given' },
      figures: { value: 3 },
      conventions: {
        moments: { value: 'clockwise' },
        horizontal: { value: 'left' },
        vertical: { value: 'down' },
        momentDiagram: { value: 'tension' },
      },
      standards: ['ASCE/SEI 7-22', 'ANSI/AISC 360-22'],
      deflectionLimits: [
        { entry: 'L', text: 'L/360' },
        { entry: 'D+L', text: 'L/240' },
        { entry: '0.5D + L', text: '0.75 in' },
      ],
      cantilevers: 'plain',
      designLoads: [
        { item: 'Ground snow', symbol: 'Pg', value: '25 psf', level: 'strength' },
      ],
      assumptions: [{ id: 'A1', confirmed: false, track: 'RFI 12' }],
      references: [{ id: 'R1' }],
      methods: { continuous: 'three-moment' },
      sheetOrder: ['G1'],
    });
    expect(read.definition.sections.plate).toMatchObject({
      name: 'plate',
      source: "maker's list",
    });
    expect(read.definition.materials.larch).toMatchObject({
      name: 'larch',
      E: { text: '1600' },
    });
  });

  test('keeps cases, areas, combinations and alternatives of loads.yaml', () => {
    expect(read.loads).toMatchObject({
      given: true,
      cases: [
        { mark: 'D', title: 'Dead', kind: 'dead', pattern: false },
        { mark: 'L', kind: 'live', source: 'ASCE 7-22 Table 4.3-1' },
        { mark: 'W1' },
        { mark: 'W2' },
      ],
      combinations: [
        { kind: 'named-set', name: 'asce7-strength' },
        { kind: 'named-set', name: 'asce7-allowable' },
        { kind: 'custom', mark: 'D + 0.5L', factors: { D: 1, L: 0.5 }, for: 'service' },
      ],
      alternatives: [['W1', 'W2']],
    });
    expect(read.loads.areas.deck).toMatchObject({
      name: 'deck',
      source: 'ASCE 7-22 Table 4.3-1',
      byCase: { D: { text: '65' }, L: { text: '90' } },
    });
  });

  test('puts members in the order that the project asks for, others by natural order of their files', () => {
    expect(read.members.map((member) => member.mark)).toEqual(['G1', 'B2', 'B10']);
    expect(read.faulty).toEqual([]);
  });

  test('reads a whole beam', () => {
    const beam = read.members.at(-1);
    expect(beam).toMatchObject({
      kind: 'beam',
      file: 'members/b10.yaml',
      mark: 'B10',
      title: 'Deck stringer',
      where: { level: 'deck', grid: 'C / 2-3', drawing: 'S-201' },
      typical: { count: 7, note: 'also B2 to B7' },
      selfWeight: 'D',
      material: { E: { text: '29000' }, density: { text: '490' } },
      deflectionLimits: [{ entry: 'L', text: 'L/480' }],
      bracing: { top: 'continuous', bottom: 'A, C' },
    });
    expect(beam?.points.map((point) => point.name)).toEqual(['A', 'B', 'C', 'D']);
    expect(beam?.loads.map((load) => [load.id, load.case, load.kind])).toEqual([
      ['load-0001', 'L', 'point'],
      ['load-0002', 'D', 'distributed'],
      ['load-0003', 'L', 'distributed'],
      ['load-0004', 'D', 'distributed'],
      ['load-0005', 'D', 'distributed'],
      ['load-0006', 'L', 'distributed'],
      ['load-0007', 'D', 'distributed'],
    ]);
  });

  test('keeps the files for the echo, with their digests, and what sheets may need', () => {
    expect(read.files.map((file) => file.path)).toEqual([
      'project.yaml',
      'loads.yaml',
      'theme.yaml',
      'members/b2.yaml',
      'members/b10.yaml',
      'members/g1.yaml',
    ]);
    expect(read.files[0]?.text).toBe(project);
    expect(read.files[0]?.sha256).toMatch(/^[0-9a-f]{64}$/);
    expect(read.templates).toEqual({ 'cover.html': '<section></section>' });
    expect(read.images).toEqual({ 'images/sketch.png': new Uint8Array([1, 2, 3]) });
    expect(read.theme).toEqual({ text: { size: 11 }, colour: { accent: [0, 0, 0.5] } });
  });
});

describe('a folder that says no more than it must', () => {
  const read = soundFolder({ 'members/b1.yaml': beamYaml() });

  test('takes the stated defaults and remembers that they are defaults', () => {
    expect(read.definition).toMatchObject({
      discipline: { value: 'structural', origin: 'default' },
      status: { value: 'preliminary', origin: 'default' },
      lengths: { value: 'decimal', origin: 'default' },
      paper: { value: 'letter', origin: 'default' },
      figures: { value: 4, origin: 'default' },
      conventions: {
        moments: { value: 'counterclockwise', origin: 'default' },
        horizontal: { value: 'right', origin: 'default' },
        vertical: { value: 'up', origin: 'default' },
        momentDiagram: { value: 'compression', origin: 'default' },
      },
    });
    expect(read.definition).not.toHaveProperty('cantilevers');
    expect(read.definition).not.toHaveProperty('logo');
  });

  test('takes paper and the side of moments from the units', () => {
    const si = soundFolder({
      'project.yaml': 'project: { title: Weir crossing }\nunits: si\n',
      'members/b1.yaml': beamYaml(),
    });
    expect(si.definition.paper.value).toBe('a4');
    expect(si.definition.conventions.momentDiagram.value).toBe('tension');
  });

  test('has one case marked all', () => {
    expect(read.loads).toMatchObject({
      given: false,
      cases: [{ mark: 'all', pattern: false }],
    });
    expect(read.loads.combinations).toEqual([]);
  });
});

describe('what stops what', () => {
  const bad = beamYaml({
    mark: 'B2',
    title: 'Edge beam',
    supports: '{ A: pin, Z: roller }',
  });

  test('a mistake inside a member stops that member, and the others stand', () => {
    const { value, diagnostics } = readFolder({
      'members/b1.yaml': beamYaml(),
      'members/b2.yaml': bad,
    });
    expect(value?.members.map((member) => member.mark)).toEqual(['B1']);
    expect(value?.faulty).toEqual([
      { mark: 'B2', kind: 'beam', title: 'Edge beam', file: 'members/b2.yaml' },
    ]);
    expect(
      diagnostics.filter((one) => one.severity === 'error').map((one) => one.member),
    ).toEqual(['B2']);
  });

  test.each([
    ['a member that cannot be parsed', { 'members/b2.yaml': 'mark: [ B2\n' }],
    [
      'a mistake in project.yaml',
      { 'project.yaml': 'project: { title: Weir }\nunits: metric\n' },
    ],
    ['a mistake in loads.yaml', { 'loads.yaml': 'case: { D: { kind: dead } }\n' }],
    ['a mistake in theme.yaml', { 'theme.yaml': 'text: { size: big }\n' }],
  ])('%s stops the project', (_, files: Record<string, string>) => {
    const { value, diagnostics } = readFolder({
      'members/b1.yaml': beamYaml(),
      ...files,
    });
    expect(value).toBeUndefined();
    expect(
      diagnostics.some((one) => one.severity === 'error' && one.member === undefined),
    ).toBe(true);
  });

  test('mistakes of all files come to light together, in reading order', () => {
    const { diagnostics } = readFolder({
      'project.yaml': 'project: { title: Weir }\nunits: metric\n',
      'loads.yaml': 'cases: { D: { kind: deaf } }\n',
      'members/b1.yaml': beamYaml({ title: '' }),
      'members/b2.yaml': bad,
    });
    const errors = diagnostics.filter((one) => one.severity === 'error');
    expect(errors.map((one) => `${one.span?.file ?? ''} ${one.code}`)).toEqual([
      'project.yaml not-one-of',
      'loads.yaml not-one-of',
      'members/b1.yaml empty-value',
      'members/b2.yaml unknown-point',
    ]);
  });

  test('two members of one mark are both at fault', () => {
    const { value } = readFolder({
      'members/b1.yaml': beamYaml(),
      'members/b2.yaml': beamYaml(),
    });
    expect(value?.members).toEqual([]);
    expect(value?.faulty.map((one) => one.file)).toEqual([
      'members/b1.yaml',
      'members/b2.yaml',
    ]);
  });
});
