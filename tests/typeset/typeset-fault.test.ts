import { describe, expect, test } from 'vitest';
import { TypesetFault } from '../../src/typeset/index.ts';
import { inEquation, refuse } from '../../src/typeset/typeset-fault.ts';
import { draw } from '../support/equations.ts';

describe('a typeset fault', () => {
  test('names the construct and gets the equation where it is known', () => {
    expect(() => refuse('a widget')).toThrow('Cannot set a widget.');
    expect(() => inEquation('x+1', () => refuse('a widget'))).toThrow(
      'Cannot set a widget in "x+1".',
    );
  });

  test('other errors pass through unchanged', () => {
    const own = new RangeError('other');
    const fail = (): never => {
      throw own;
    };
    expect(() => inEquation('x', fail)).toThrow(own);
  });

  test('carries its parts, and a kind to be told by', () => {
    try {
      draw('\\reflectbox{x}');
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(TypesetFault);
      expect(error).toMatchObject({
        kind: 'typeset-fault',
        construct: '\\reflectbox',
        tex: '\\reflectbox{x}',
      });
    }
  });
});
