import { describe, expect, test } from 'vitest';
import {
  findCrossSection,
  type TabulatedCrossSection,
} from '../../src/standards/index.ts';
import { expectPrinted } from '../support/in-words.ts';

type Printed = Partial<
  Record<'A' | 'd' | 'bf' | 'tf' | 'tw' | 'I' | 'S' | 'weight', string>
>;

const reads: Record<keyof Printed, (of: TabulatedCrossSection) => number> = {
  A: (of) => of.A.si,
  d: (of) => of.depth.si,
  bf: (of) => of.plates.flangeWidth.si,
  tf: (of) => of.plates.flangeThickness.si,
  tw: (of) => of.plates.webThickness.si,
  I: (of) => of.I.si,
  S: (of) => of.S!.si,
  weight: (of) => of.weight!.si,
};

function expectTabulated(name: string, printed: Printed): void {
  const section = findCrossSection(name);
  expect(section, name).toBeDefined();
  for (const [key, text] of Object.entries(printed)) {
    expectPrinted(reads[key as keyof Printed](section!), text);
  }
}

describe('Baker and Haynes, Engineering Statics, appendix of steel sections, seen', () => {
  // Its angles are not in the program's tables: an angle in bending leaves the plane of its loads.
  test.each<[string, Printed]>([
    [
      'W44x335',
      {
        A: '98.5 in^2',
        d: '44 in',
        bf: '15.9 in',
        tw: '1.03 in',
        tf: '1.77 in',
        I: '31100 in^4',
      },
    ],
    [
      'W36x302',
      {
        A: '89 in^2',
        d: '37.3 in',
        bf: '16.7 in',
        tw: '0.945 in',
        tf: '1.68 in',
        I: '21100 in^4',
      },
    ],
    [
      'S15x42.9',
      {
        A: '12.6 in^2',
        d: '15 in',
        bf: '5.5 in',
        tw: '0.411 in',
        tf: '0.622 in',
        I: '446 in^4',
      },
    ],
    [
      'C15x50',
      {
        A: '14.7 in^2',
        d: '15 in',
        bf: '3.72 in',
        tw: '0.716 in',
        tf: '0.65 in',
        I: '404 in^4',
      },
    ],
    [
      'W920x271',
      {
        A: '34600 mm^2',
        d: '922 mm',
        bf: '307 mm',
        tw: '18.4 mm',
        tf: '30 mm',
        I: '4700e6 mm^4',
      },
    ],
    [
      'C150x12.2',
      {
        A: '1540 mm^2',
        d: '152 mm',
        bf: '48.8 mm',
        tw: '5.08 mm',
        tf: '8.71 mm',
        I: '5.45e6 mm^4',
      },
    ],
  ])('%s', (name, printed) => {
    expectTabulated(name, printed);
  });
});

describe('Quimby, A Beginner’s Guide to the Steel Construction Manual, example 8.1, seen', () => {
  test('W18x35', () => {
    expectTabulated('W18x35', {
      d: '17.7 in',
      tw: '0.3 in',
      tf: '0.425 in',
      I: '510 in^4',
      S: '57.6 in^3',
    });
    const { plates } = findCrossSection('W18x35')!;
    const ratio = plates.flangeWidth.si / (2 * plates.flangeThickness.si);
    expectPrinted(ratio, '7.06');
  });
});

describe('tables of shapes, from memory', () => {
  test.each<[string, Printed]>([
    [
      'W12x26',
      { A: '7.65 in^2', d: '12.2 in', bf: '6.49 in', tf: '0.380 in', tw: '0.230 in' },
    ],
    ['W12x26', { I: '204 in^4', S: '33.4 in^3', weight: '26 lb/ft' }],
    [
      'W21x44',
      { A: '13.0 in^2', d: '20.7 in', bf: '6.50 in', tf: '0.450 in', tw: '0.350 in' },
    ],
    ['W21x44', { I: '843 in^4', S: '81.6 in^3', weight: '44 lb/ft' }],
    [
      'W24x55',
      { A: '16.2 in^2', d: '23.6 in', bf: '7.01 in', tf: '0.505 in', tw: '0.395 in' },
    ],
    ['W24x55', { I: '1350 in^4', S: '114 in^3', weight: '55 lb/ft' }],
    [
      'W8x31',
      { A: '9.13 in^2', d: '8.00 in', bf: '8.00 in', tf: '0.435 in', tw: '0.285 in' },
    ],
    ['W8x31', { I: '110 in^4', S: '27.5 in^3', weight: '31 lb/ft' }],
    ['IPE300', { A: '53.8 cm^2', d: '300 mm', bf: '150 mm', tf: '10.7 mm' }],
    ['IPE300', { tw: '7.1 mm', I: '8356 cm^4', S: '557 cm^3' }],
  ])('%s %j', (name, printed) => {
    expectTabulated(name, printed);
  });
});
