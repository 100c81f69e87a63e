import { describe, expect, test } from 'vitest';
import { zerosOf } from '../../src/statics/index.ts';
import { beam, down, pin, roller, spread, turn } from '../support/beam.ts';
import { expectExactly, expectPrinted, si } from '../support/in-words.ts';
import { solved } from '../support/solved.ts';

describe('McLean, Engineering Mechanics (Schaum), FOSSEE Textbook Companion, seen', () => {
  test('8-1 and 8-2: a force on a simple beam', () => {
    const found = solved(
      beam({
        points: { A: 0, B: si('6 m') },
        supports: { A: pin, B: roller() },
        loads: [down(si('300 N'), si('4 m'))],
      }),
    );
    expectExactly(found.up('A'), '100 N');
    expectExactly(found.up('B'), '200 N');
    expectExactly(found.shear(si('2 m')), '100 N');
    expectExactly(found.moment(si('2 m')), '200 N m');
    expectExactly(found.moment(si('4 m')), '400 N m');
  });

  test('8-3: part uniform load and a couple, by its exact answers', () => {
    // The companion cuts digits off on its way (757 N, 3.86 m, 1462 N·m); these are its data worked out in full.
    const found = solved(
      beam({
        points: { A: 0, B: si('18 m') },
        supports: { A: pin, B: roller() },
        loads: [
          spread(si('196 N/m'), 'A', si('6 m')),
          turn(-si('4000 N m'), si('12 m')),
        ],
      }),
    );
    expectPrinted(found.up('A'), '757.78 N');
    expectPrinted(found.up('B'), '418.22 N');
    const [crossing] = zerosOf(found.result.shear);
    const x = crossing?.kind === 'at' ? crossing.x : Number.NaN;
    expectPrinted(x, '3.866 m');
    expectPrinted(found.moment(x), '1464.87 N m');
    // The greatest moment of all is not that one: it stands just right of the couple, 418.22 N × 6 m.
    expectPrinted(found.greatest.value, '2509.33 N m');
    expectExactly(found.greatest.x, '12 m');
  });
});

describe('MATHalino engineering review (mathalino.com), seen', () => {
  test('problem 404: a force and a couple', () => {
    // Force and couple are inferred from the leaps of the printed diagrams.
    const ft = si('1 ft');
    const found = solved(
      beam({
        points: { A: 0, D: 12 * ft },
        supports: { A: pin, D: roller() },
        loads: [down(si('2000 lb'), 3 * ft), turn(si('4800 lb ft'), 9 * ft)],
      }),
    );
    expectExactly(found.shear(2 * ft), '1900 lb');
    expectExactly(found.shear(6 * ft), '-100 lb');
    expectExactly(found.shear(11 * ft), '-100 lb');
    expectExactly(found.moment(3 * ft), '5700 lb ft');
    expectExactly(found.moment(9 * ft, 'left'), '5100 lb ft');
    expectExactly(found.moment(9 * ft, 'right'), '300 lb ft');
  });

  test('problem 406: uniform load and two forces on a beam with an overhang', () => {
    const ft = si('1 ft');
    const found = solved(
      beam({
        points: { A: 0, C: 12 * ft, D: 18 * ft },
        supports: { A: pin, C: roller() },
        loads: [
          spread(si('60 lb/ft'), 'A', 'D'),
          down(si('900 lb'), 4 * ft),
          down(si('400 lb'), 'D'),
        ],
      }),
    );
    expectExactly(found.up('A'), '670 lb');
    expectExactly(found.up('C'), '1710 lb');
    expectExactly(found.shear(4 * ft, 'right'), '-470 lb');
    expectExactly(found.shear(12 * ft, 'left'), '-950 lb');
    expectExactly(found.shear(12 * ft, 'right'), '760 lb');
    expectExactly(found.shear(18 * ft), '400 lb');
    expectExactly(found.moment(4 * ft), '2200 lb ft');
    expectExactly(found.moment(12 * ft), '-3480 lb ft');
    const inside = zerosOf(found.result.moment).flatMap((zero) =>
      zero.kind === 'at' && zero.x > ft && zero.x < 17 * ft ? [zero.x] : [],
    );
    expect(inside).toHaveLength(1);
    expectPrinted(inside[0]!, '7.772 ft');
  });
});
