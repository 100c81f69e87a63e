import { describe, expect, test } from 'vitest';
import { diffTexts } from '../../../src/comparison/inputs/text-entries.ts';

const stand = { part: 'cautions', what: 'caution' } as const;

describe('diffTexts', () => {
  test('tells nothing of another order or of other blanks', () => {
    expect(
      diffTexts(['One thing', 'Two  things'], ['Two things', 'One thing'], stand),
    ).toEqual([]);
  });

  test('tells a text that was reworded from one that was replaced', () => {
    expect(
      diffTexts(
        ['Prop the beam until the slab is hard', 'Mind the step'],
        ['Salt the road', 'Prop the beam until the slab is set'],
        stand,
      ),
    ).toEqual([
      {
        kind: 'changed',
        ...stand,
        from: 'Prop the beam until the slab is hard',
        to: 'Prop the beam until the slab is set',
      },
      { kind: 'removed', ...stand, from: 'Mind the step' },
      { kind: 'added', ...stand, to: 'Salt the road' },
    ]);
  });

  test('counts a text that stands twice', () => {
    expect(
      diffTexts(['Mind the step'], ['Mind the step', 'Mind the step'], stand),
    ).toEqual([{ kind: 'added', ...stand, to: 'Mind the step' }]);
  });
});
