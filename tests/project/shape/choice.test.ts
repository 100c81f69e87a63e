import { describe, expect, test } from 'vitest';
import { byForm, byKey, byWord } from '../../../src/project/shape/choice.ts';
import { required } from '../../../src/project/shape/field.ts';
import { listOf } from '../../../src/project/shape/list.ts';
import { objectOf } from '../../../src/project/shape/object.ts';
import { turned } from '../../../src/project/shape/shape.ts';
import { oneOf, text } from '../../../src/project/shape/text.ts';
import { readAs } from '../../support/reading.ts';

describe('a value that may be written in several forms', () => {
  const names = byForm({ text: turned(text, (one) => [one]), list: listOf(text) });
  test('is read in each', () => {
    expect(readAs(names, 'a').value).toEqual(['a']);
    expect(readAs(names, '[ a, b ]').value).toEqual(['a', 'b']);
  });
  test('and in no other', () => {
    expect(readAs(names, 'a: b').findings).toEqual([
      'wrong-shape 0-4 a text, or a list, each item a text belongs here, not a map of keys and values',
    ]);
  });
});

describe('objects told apart by a word', () => {
  const shape = byWord<object>('a shape', 'type', {
    disc: objectOf('a disc', {
      type: required(oneOf('disc'), 'what it is'),
      radius: required(text, 'its radius'),
    }),
    bar: objectOf('a bar', { type: required(oneOf('bar'), 'what it is') }),
  });
  test('have the keys of their word', () => {
    expect(readAs(shape, '{ type: disc, radius: 3 }').value).toEqual({
      type: 'disc',
      radius: '3',
    });
    expect(readAs(shape, '{ type: bar, radius: 3 }').findings).toEqual([
      'unknown-key 13-19 no key `radius` is known here',
    ]);
    expect(readAs(shape, '{ radius: 3 }').findings).toEqual([
      'missing-key 0-13 `type` is missing, which says what this is',
    ]);
    expect(readAs(shape, 'disc').findings).toEqual([
      'wrong-shape 0-4 a shape belongs here, not `disc`',
    ]);
  });
});

describe('objects told apart by a key', () => {
  const load = byKey<object>('a load', {
    point: objectOf('a point load', { point: required(text, 'its size') }),
    area: objectOf('an area load', { area: required(text, 'its name') }),
  });
  test('are read by the key that they hold', () => {
    expect(readAs(load, '{ point: 3 }').value).toEqual({ point: '3' });
    expect(readAs(load, '{ area: deck }').value).toEqual({ area: 'deck' });
  });
  test('hold exactly one of the keys', () => {
    expect(readAs(load, '{ point: 3, area: deck }').findings).toEqual([
      'keys-together 12-16 `point` and `area` cannot stand together',
    ]);
    expect(readAs(load, '{ x: 3 }').findings).toEqual([
      'missing-key 0-8 nothing here says what this is; a load belongs here',
    ]);
    expect(readAs(load, '{ pont: 3 }').findings).toEqual([
      'unknown-key 2-6 no key `pont` is known here',
    ]);
  });
});
