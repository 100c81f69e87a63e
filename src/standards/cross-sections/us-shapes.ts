import { unitOf, type Unit } from '../../units/index.ts';
import { given } from '../given.ts';
import type { TabulatedCrossSection } from './cross-section.ts';

const inch = (power: number): Unit => unitOf([{ symbol: 'in', power }]);
const plf = unitOf([{ symbol: 'plf', power: 1 }]);

const manual = 'AISC Steel Construction Manual, Table 1-1 (from memory)';
const textbook =
  'D. Baker and W. Haynes, Engineering Statics: Open and Interactive, appendix of steel sections';
const guide =
  'T. B. Quimby, A Beginner’s Guide to the Steel Construction Manual, 14th ed., example 8.1; A and flange width from memory';

/**
 * Shapes of US practice in inches, lb/ft by designation. The rows without S are from a source
 * that does not print it. Rows from memory are held against the plates that they are made of by a test.
 */
export const usShapes: readonly TabulatedCrossSection[] = [
  // Designation, weight, A, d, width and thickness of the flange, thickness of the web, I, S; source.
  shape('W8x10', '10', '2.96 7.89 3.94 0.205 0.170 30.8 7.81', manual),
  shape('W8x18', '18', '5.26 8.14 5.25 0.330 0.230 61.9 15.2', manual),
  shape('W8x24', '24', '7.08 7.93 6.50 0.400 0.245 82.7 20.9', manual),
  shape('W8x31', '31', '9.13 8.00 8.00 0.435 0.285 110 27.5', manual),
  shape('W10x12', '12', '3.54 9.87 3.96 0.210 0.190 53.8 10.9', manual),
  shape('W10x22', '22', '6.49 10.2 5.75 0.360 0.240 118 23.2', manual),
  shape('W10x33', '33', '9.71 9.73 7.96 0.435 0.290 171 35.0', manual),
  shape('W10x49', '49', '14.4 10.0 10.0 0.560 0.340 272 54.6', manual),
  shape('W12x14', '14', '4.16 11.9 3.97 0.225 0.200 88.6 14.9', manual),
  shape('W12x19', '19', '5.57 12.2 4.01 0.350 0.235 130 21.3', manual),
  shape('W12x26', '26', '7.65 12.2 6.49 0.380 0.230 204 33.4', manual),
  shape('W12x35', '35', '10.3 12.5 6.56 0.520 0.300 285 45.6', manual),
  shape('W12x40', '40', '11.7 11.9 8.01 0.515 0.295 307 51.5', manual),
  shape('W12x53', '53', '15.6 12.1 10.0 0.575 0.345 425 70.6', manual),
  shape('W14x22', '22', '6.49 13.7 5.00 0.335 0.230 199 29.0', manual),
  shape('W14x30', '30', '8.85 13.8 6.73 0.385 0.270 291 42.0', manual),
  shape('W14x38', '38', '11.2 14.1 6.77 0.515 0.310 385 54.6', manual),
  shape('W14x48', '48', '14.1 13.8 8.03 0.595 0.340 484 70.2', manual),
  shape('W16x26', '26', '7.68 15.7 5.50 0.345 0.250 301 38.4', manual),
  shape('W16x31', '31', '9.13 15.9 5.53 0.440 0.275 375 47.2', manual),
  shape('W16x40', '40', '11.8 16.0 7.00 0.505 0.305 518 64.7', manual),
  shape('W18x35', '35', '10.3 17.7 6.00 0.425 0.300 510 57.6', guide),
  shape('W18x40', '40', '11.8 17.9 6.02 0.525 0.315 612 68.4', manual),
  shape('W18x50', '50', '14.7 18.0 7.50 0.570 0.355 800 88.9', manual),
  shape('W21x44', '44', '13.0 20.7 6.50 0.450 0.350 843 81.6', manual),
  shape('W21x50', '50', '14.7 20.8 6.53 0.535 0.380 984 94.5', manual),
  shape('W21x62', '62', '18.3 21.0 8.24 0.615 0.400 1330 127', manual),
  shape('W24x55', '55', '16.2 23.6 7.01 0.505 0.395 1350 114', manual),
  shape('W24x68', '68', '20.1 23.7 8.97 0.585 0.415 1830 154', manual),
  shape('W24x76', '76', '22.4 23.9 8.99 0.680 0.440 2100 176', manual),
  shape('W36x302', '302', '89 37.3 16.7 1.68 0.945 21100', textbook),
  shape('W44x335', '335', '98.5 44 15.9 1.77 1.03 31100', textbook),
  shape('S15x42.9', '42.9', '12.6 15 5.5 0.622 0.411 446', textbook),
  shape('C15x50', '50', '14.7 15 3.72 0.65 0.716 404', textbook),
];

function shape(
  name: string,
  weight: string,
  row: string,
  source: string,
): TabulatedCrossSection {
  const [A = '', depth = '', width = '', flange = '', web = '', I = '', S] =
    row.split(' ');
  return {
    name,
    A: given(A, inch(2)),
    depth: given(depth, inch(1)),
    I: given(I, inch(4)),
    ...(S === undefined ? {} : { S: given(S, inch(3)) }),
    weight: given(weight, plf),
    plates: {
      flangeWidth: given(width, inch(1)),
      flangeThickness: given(flange, inch(1)),
      webThickness: given(web, inch(1)),
    },
    source,
  };
}
