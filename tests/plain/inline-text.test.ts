import { describe, expect, test } from 'vitest';
import { name, sum } from '../../src/equation/index.ts';
import { inlineText, withoutControls } from '../../src/plain/inline-text.ts';

describe('the parts of a line as text', () => {
  test('text loses its style, a link its target', () => {
    expect(
      inlineText([
        { kind: 'text', text: 'No results.', style: 'strong' },
        { kind: 'break' },
        {
          kind: 'link',
          anchor: 'member-B2',
          content: [{ kind: 'text', text: 'B2', style: 'plain' }],
        },
      ]),
    ).toBe('No results.\nB2');
  });

  test('a sheet number becomes a word on what stands there', () => {
    expect(inlineText([{ kind: 'sheet-number', anchor: 'member-B2' }])).toBe(
      'see\u00a0B2',
    );
    expect(inlineText([{ kind: 'sheet-number', anchor: 'reactions' }])).toBe(
      'see\u00a0reactions',
    );
  });

  test('a blank to write on is as long as it is wide, three low lines at least', () => {
    expect(inlineText([{ kind: 'blank', width: 60 }])).toBe('__________');
    expect(inlineText([{ kind: 'blank', width: 1 }])).toBe('___');
  });

  test('short mathematics holds together, long may break', () => {
    const R = name({ meaning: 'reaction', letter: 'R', subscript: 'C' });
    expect(inlineText([{ kind: 'math', expression: sum(R, R) }])).toBe(
      'R_C\u00a0+\u00a0R_C',
    );
    const long = sum(R, R, R, R, R);
    expect(inlineText([{ kind: 'math', expression: long }])).toContain(' + ');
  });
});

test('control characters are shown and not obeyed', () => {
  expect(withoutControls('Stair\u001b[2J\u0007')).toBe('Stair\ufffd[2J\ufffd');
});
