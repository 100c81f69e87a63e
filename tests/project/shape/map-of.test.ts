import { describe, expect, test } from 'vitest';
import { mapOf, recordOf, valuesByName } from '../../../src/project/shape/map-of.ts';
import { numberFrom } from '../../../src/project/shape/number.ts';
import { text } from '../../../src/project/shape/text.ts';
import { readAs } from '../../support/reading.ts';

const map = mapOf(text, numberFrom({ from: 0, to: 9 }), 'a map of names and numbers');

describe('a map of names', () => {
  test('keeps the name of a value that does not fit', () => {
    const { value, findings } = readAs(map, '{ a: 1, b: x }');
    expect(value).toMatchObject([
      {
        name: { value: 'a', span: { start: 2, end: 3 } },
        value: 1,
        at: { start: 5, end: 6 },
      },
      { name: { value: 'b' }, value: undefined },
    ]);
    expect(findings).toHaveLength(1);
    expect(valuesByName(value ?? [])).toEqual({ a: 1 });
  });

  test('is empty where nothing is given, and is no list', () => {
    expect(readAs(map, '~').value).toEqual([]);
    expect(readAs(map, '[ 1 ]').findings).toEqual([
      'wrong-shape 0-5 a map of names and numbers belongs here, not a list',
    ]);
  });
});

test('a record has the names that it is given and no other', () => {
  const record = recordOf([
    ['__proto__', 1],
    ['constructor', 2],
  ]);
  const valueOf = (name: string): unknown => record[name];
  expect(['__proto__', 'constructor', 'toString'].map(valueOf)).toEqual([
    1,
    2,
    undefined,
  ]);
  expect(Object.keys(record)).toEqual(['__proto__', 'constructor']);
});
