import { describe, expect, test } from 'vitest';
import { nameOf, oneOf, text, truth } from '../../../src/project/shape/text.ts';
import { readAs } from '../../support/reading.ts';

describe('a text', () => {
  test('may look like a number, a date or a truth', () => {
    for (const written of ['2031', '2031-03-14', 'yes', 'no', 'true', '0017', '"null"'])
      expect(readAs(text, written).value).toBe(written.replaceAll('"', ''));
  });

  test('may run over several lines', () => {
    expect(readAs(text, '|\n  one\n  two\n').value).toBe('one\ntwo');
  });

  test('is not empty, a list or a map', () => {
    expect(readAs(text, '""').findings).toEqual([
      'empty-value 0-2 nothing is given where a text belongs',
    ]);
    expect(readAs(text, '~').findings).toEqual([
      'empty-value 0-1 nothing is given where a text belongs',
    ]);
    expect(readAs(text, '[ a ]').findings).toEqual([
      'wrong-shape 0-5 a text belongs here, not a list',
    ]);
    expect(readAs(text, 'a: b').findings).toEqual([
      'wrong-shape 0-4 a text belongs here, not a map of keys and values',
    ]);
  });
});

describe('one of some words', () => {
  const side = oneOf('left', 'right');
  test('is the word', () => {
    expect(readAs(side, 'left').value).toBe('left');
  });
  test('is not another word', () => {
    expect(readAs(side, 'lefft').findings).toEqual([
      'not-one-of 0-5 `lefft` is none of left, right',
    ]);
    expect(readAs(side, '[ left ]').findings).toEqual([
      'wrong-shape 0-8 one of left, right belongs here, not a list',
    ]);
  });
});

describe('a truth', () => {
  test('is true or false as YAML 1.2 has them', () => {
    for (const written of ['true', 'True', 'TRUE'])
      expect(readAs(truth, written).value).toBe(true);
    for (const written of ['false', 'False', 'FALSE'])
      expect(readAs(truth, written).value).toBe(false);
  });
  test('is none of the words that YAML 1.1 took for it', () => {
    for (const written of ['yes', 'no', 'on', 'off', 'y', '1'])
      expect(readAs(truth, written).findings).toEqual([
        `wrong-shape 0-${written.length} true or false belongs here, not \`${written}\``,
      ]);
  });
});

describe('a name', () => {
  const name = nameOf('a mark', /^[A-Z]\d+$/, 'marks are a letter and a number');
  test('has its form', () => {
    expect(readAs(name, 'B12').value).toBe('B12');
    expect(readAs(name, 'B.12').findings).toEqual([
      'bad-name 0-4 `B.12` cannot be a mark',
    ]);
  });
});
