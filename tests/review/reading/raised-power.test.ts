import { expect, test } from 'vitest';
import { raisedPower } from '../../../src/review/reading/raised-power.ts';
import { readLine } from '../../../src/review/reading/read-line.ts';
import { linearForm } from '../../../src/review/reading/linear-form.ts';

test('an exponent written small is read with its sign, however long', () => {
  expect(raisedPower('² kip')).toEqual({ length: 1, isMinus: false, digits: '2' });
  expect(raisedPower('⁻¹² m')).toEqual({ length: 3, isMinus: true, digits: '12' });
  expect(raisedPower('2')).toBeUndefined();
});

test.each([
  ['36.26×10^−6 kN', 0.03626],
  ['36.26 * 10^-6 kN', 0.03626],
  ['50×10⁶ N', 50e6],
  ['50×10⁻³ N', 0.05],
])('%s is read as it is printed', (text, newtons) => {
  const [line] = readLine(text, []).readings!;
  const { form } = linearForm(line!.links[0]!, () => undefined);
  expect(form!.constant).toBeCloseTo(newtons, 9);
  expect(form!.dimension).toMatchObject({ force: 1, length: 0 });
});
