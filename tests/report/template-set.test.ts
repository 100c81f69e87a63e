import { describe, expect, test } from 'vitest';
import { exactly, name } from '../../src/equation/index.ts';
import { displayUnit } from '../../src/units/index.ts';
import { openTemplates } from '../../src/report/template-set.ts';

const kip = displayUnit('us', 'force');

describe('templates', () => {
  test('place equations by reference and keep them beside the text', () => {
    const templates = openTemplates({ one: '<p>{{symbol s}} is {{value v}}</p>' });
    const filled = templates.fill('one', {
      s: { letter: 'R', subscript: 'A', meaning: 'vertical reaction at A' },
      v: exactly(8.4, kip),
    });
    expect(filled).toEqual({
      xhtml: '<p><math ref="0"/> is 8.4\u00a0kip</p>',
      placed: [
        {
          kind: 'expression',
          expression: name({
            letter: 'R',
            subscript: 'A',
            meaning: 'vertical reaction at A',
          }),
        },
      ],
    });
  });

  test('escape what a definition file brings, so that a title cannot be markup', () => {
    const filled = openTemplates({ one: '<p>{{title}}</p>' }).fill('one', {
      title: 'Beams <b> & more',
    });
    expect(filled).toMatchObject({ xhtml: '<p>Beams &lt;b&gt; &amp; more</p>' });
  });

  test('name the partial that does not parse, with its line', () => {
    const templates = openTemplates({
      whole: '{{> part}}',
      part: '<p>\n{{#if a}}\n</p>',
    });
    expect(templates.fill('whole', {})).toMatchObject({
      fault: { template: 'part.hbs' },
    });
  });

  test('say so where there is no such template', () => {
    expect(openTemplates({}).fill('missing', {})).toMatchObject({
      fault: { template: 'missing.hbs' },
    });
  });

  test('list words as a sentence does, and spell small counts', () => {
    const templates = openTemplates({
      one: '<p>{{list words}}; {{plural n "unknown" "unknowns"}}; {{plural m "unknown" "unknowns"}}</p>',
    });
    const filled = templates.fill('one', { words: ['A', 'B', 'C'], n: 1, m: 14 });
    expect(filled).toMatchObject({
      xhtml: '<p>A, B and C; one unknown; 14 unknowns</p>',
    });
  });
});

test('a helper that is given nothing is the template’s fault, not a crash', () => {
  const templates = openTemplates({
    one: '<p>{{symbol nothing}}</p>',
    two: '{{equation nothing}}',
  });
  expect(templates.fill('one', {})).toMatchObject({ fault: { template: 'one.hbs' } });
  expect(templates.fill('two', {})).toMatchObject({ fault: { template: 'two.hbs' } });
});

test('a template can ask whether a part is in the package', () => {
  const templates = openTemplates(
    { one: '{{#if (present "a")}}a{{/if}}{{#if (present "b")}}b{{/if}}' },
    new Set(['a']),
  );
  expect(templates.fill('one', {})).toMatchObject({ xhtml: 'a' });
});
