import { unitOf, type Unit } from '../../units/index.ts';
import { given } from '../given.ts';
import type { TabulatedCrossSection } from './cross-section.ts';

const mm = unitOf([{ symbol: 'mm', power: 1 }]);
const mmTo = (power: number): Unit => unitOf([{ symbol: 'mm', power }]);
const cmTo = (power: number): Unit => unitOf([{ symbol: 'cm', power }]);

const standard = 'EN 10365, as in makers’ tables (from memory)';
const textbook =
  'D. Baker and W. Haynes, Engineering Statics: Open and Interactive, appendix of steel sections';

/**
 * European I- and H-shapes, and two metric shapes of US practice. Their tables give a mass, so
 * that none has a weight. Rows from memory are held against their plates and root radii by a test.
 */
export const metricShapes: readonly TabulatedCrossSection[] = [
  // Designation; h, b, t_f, t_w and r in mm; A, I and W_el in powers of cm.
  shape('IPE200', '200 100 8.5 5.6 12', '28.5 1943 194'),
  shape('IPE220', '220 110 9.2 5.9 12', '33.4 2772 252'),
  shape('IPE240', '240 120 9.8 6.2 15', '39.1 3892 324'),
  shape('IPE270', '270 135 10.2 6.6 15', '45.9 5790 429'),
  shape('IPE300', '300 150 10.7 7.1 15', '53.8 8356 557'),
  shape('IPE330', '330 160 11.5 7.5 18', '62.6 11770 713'),
  shape('IPE360', '360 170 12.7 8.0 18', '72.7 16270 904'),
  shape('IPE400', '400 180 13.5 8.6 21', '84.5 23130 1160'),
  shape('HEA200', '190 200 10 6.5 18', '53.8 3692 389'),
  shape('HEA220', '210 220 11 7 18', '64.3 5410 515'),
  shape('HEA240', '230 240 12 7.5 21', '76.8 7763 675'),
  shape('HEA260', '250 260 12.5 7.5 24', '86.8 10450 836'),
  shape('HEA280', '270 280 13 8 24', '97.3 13670 1010'),
  shape('HEA300', '290 300 14 8.5 27', '112.5 18260 1260'),
  shape('HEB200', '200 200 15 9 18', '78.1 5696 570'),
  shape('HEB220', '220 220 16 9.5 18', '91.0 8091 736'),
  shape('HEB240', '240 240 17 10 21', '106.0 11260 938'),
  shape('HEB260', '260 260 17.5 10 24', '118.4 14920 1150'),
  shape('HEB280', '280 280 18 10.5 24', '131.4 19270 1380'),
  shape('HEB300', '300 300 19 11 27', '149.1 25170 1680'),
  plain('W920x271', '922 307 30 18.4', '34600 4700e6'),
  plain('C150x12.2', '152 48.8 8.71 5.08', '1540 5.45e6'),
];

function shape(
  name: string,
  dimensions: string,
  properties: string,
): TabulatedCrossSection {
  const [h = '', b = '', flange = '', web = '', r = ''] = dimensions.split(' ');
  const [A = '', I = '', S = ''] = properties.split(' ');
  return {
    name,
    A: given(A, cmTo(2)),
    depth: given(h, mm),
    I: given(I, cmTo(4)),
    S: given(S, cmTo(3)),
    plates: {
      flangeWidth: given(b, mm),
      flangeThickness: given(flange, mm),
      webThickness: given(web, mm),
      rootRadius: given(r, mm),
    },
    source: standard,
  };
}

function plain(
  name: string,
  dimensions: string,
  properties: string,
): TabulatedCrossSection {
  const [h = '', b = '', flange = '', web = ''] = dimensions.split(' ');
  const [A = '', I = ''] = properties.split(' ');
  return {
    name,
    A: given(A, mmTo(2)),
    depth: given(h, mm),
    I: given(I, mmTo(4)),
    plates: {
      flangeWidth: given(b, mm),
      flangeThickness: given(flange, mm),
      webThickness: given(web, mm),
    },
    source: textbook,
  };
}
