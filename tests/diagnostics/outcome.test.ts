import { expect, test } from 'vitest';
import { hasErrors, type Diagnostic } from '../../src/diagnostics/index.ts';

const of = (severity: Diagnostic['severity']): Diagnostic => ({
  severity,
  code: 'load-zero',
  message: 'this load is 0',
  hints: [],
});

test('remarks are no errors', () => {
  expect(hasErrors([])).toBe(false);
  expect(hasErrors([of('remark')])).toBe(false);
  expect(hasErrors([of('remark'), of('error')])).toBe(true);
});
