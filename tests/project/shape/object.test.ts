import { describe, expect, test } from 'vitest';
import type { Stated } from '../../../src/project/index.ts';
import {
  defaulted,
  optional,
  optionalOr,
  required,
} from '../../../src/project/shape/field.ts';
import { numberFrom } from '../../../src/project/shape/number.ts';
import { objectOf } from '../../../src/project/shape/object.ts';
import { oneOf, text } from '../../../src/project/shape/text.ts';
import { readAs } from '../../support/reading.ts';

interface Thing {
  readonly title: string;
  readonly note?: string;
  readonly size: Stated<number>;
  readonly side: 'left' | 'right';
}
const thing = objectOf<Thing>('a thing', {
  title: required(text, 'what it is called'),
  note: optional(text, 'anything'),
  size: defaulted(numberFrom({ from: 0, to: 9 }), 4, 'how large it is'),
  side: optionalOr(oneOf('left', 'right'), 'left', 'where it stands'),
});

describe('an object', () => {
  test('remembers which values were given and which are defaults', () => {
    expect(readAs(thing, '{ title: Box }').value).toEqual({
      title: 'Box',
      size: { value: 4, origin: 'default' },
      side: 'left',
    });
    expect(
      readAs(thing, '{ title: Box, size: 7, note: big, side: right }').value,
    ).toEqual({
      title: 'Box',
      note: 'big',
      size: { value: 7, origin: 'given', span: { file: 'f.yaml', start: 20, end: 21 } },
      side: 'right',
    });
  });

  test('tells of every key that is missing, unknown, empty or unfit at once', () => {
    expect(readAs(thing, '{ size: 12, note: , weight: 3 }')).toEqual({
      value: undefined,
      findings: [
        'unknown-key 20-26 no key `weight` is known here',
        'missing-key 0-31 `title` is missing: what it is called',
        'empty-value 12-16 nothing is given where a text belongs',
        'number-out-of-range 8-10 a number from 0 to 9 belongs here, not 12',
      ],
    });
  });

  test('tells once of a key that is misspelt, not again that it is missing', () => {
    expect(readAs(thing, '{ tilte: Box }').findings).toEqual([
      'unknown-key 2-7 no key `tilte` is known here',
    ]);
  });

  test('tells once of a number that a comma cut in two', () => {
    expect(readAs(thing, '{ title: 1,250 lb, size: 3 }').findings).toEqual([
      'comma-in-number 9-17 the comma ends the entry: this reads as `1` and `250 lb`',
    ]);
  });

  test('keeps the parts that fit, for whoever asks for parts', () => {
    expect(
      readAs({ ...thing, read: thing.readParts }, '{ title: Box, size: 12, x: 1 }')
        .value,
    ).toEqual({
      title: 'Box',
      side: 'left',
    });
  });

  test('is described to editors with what its keys mean', () => {
    expect(thing.schema).toEqual({
      type: 'object',
      properties: {
        title: {
          type: ['string', 'number', 'boolean'],
          description: 'what it is called',
        },
        note: { type: ['string', 'number', 'boolean'], description: 'anything' },
        size: {
          type: 'number',
          minimum: 0,
          maximum: 9,
          description: 'how large it is',
          default: 4,
        },
        side: {
          enum: ['left', 'right'],
          description: 'where it stands',
          default: 'left',
        },
      },
      required: ['title'],
      additionalProperties: false,
    });
  });
});
