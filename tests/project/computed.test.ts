import fc from 'fast-check';
import { expect, test } from 'vitest';
import { computedQuantity } from '../../src/project/computed.ts';
import {
  displayUnit,
  parseQuantity,
  quantity,
  unitText,
} from '../../src/units/index.ts';

const unit = displayUnit('us', 'force-per-length');

test('a computed quantity reads as a person would write it, and keeps its full value', () => {
  const load = computedQuantity(
    { si: 0.1 * 3 * unit.inSi, dimension: unit.dimension },
    unit,
  );
  expect(load).toMatchObject({ text: '0.3', compound: false, si: 0.1 * 3 * unit.inSi });
  expect(computedQuantity({ si: -0, dimension: unit.dimension }, unit).text).toBe('0');
});

test('its text is read back to the same value', () => {
  const sizes = fc.double({ min: 1e-6, max: 1e9, noNaN: true });
  fc.assert(
    fc.property(sizes, fc.boolean(), (size, negative) => {
      const given = computedQuantity(quantity(negative ? -size : size, unit), unit);
      const read = parseQuantity(
        `${given.text} ${unitText(unit, 'data')}`,
        unit.dimension,
      );
      const difference = Math.abs((read.quantity?.si ?? NaN) - given.si);
      expect(difference).toBeLessThanOrEqual(1e-11 * Math.abs(given.si));
    }),
  );
});
