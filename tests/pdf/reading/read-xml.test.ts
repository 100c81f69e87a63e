import { describe, expect, test } from 'vitest';
import { readXml } from '../../../src/pdf/reading/read-xml.ts';

describe('the XML of a metadata packet', () => {
  test('is read as elements with their texts, entities undone', () => {
    expect(
      readXml(
        '<?xpacket begin="x"?>\n<a b="1">\n<!-- no text --><c>x &amp; y &lt;&#x41;&#66;&gt;</c><d/></a>\n',
      ),
    ).toMatchObject({
      name: 'a',
      attributes: ' b="1"',
      children: [
        { name: 'c', text: 'x & y <AB>' },
        { name: 'd', children: [] },
      ],
    });
  });

  test.each([
    ['', 'not one element'],
    ['<a>', 'has no end'],
    ['<a></b>', 'a ends as b'],
    ['</a>', 'ends as a'],
    ['<a/><b/>', 'not one element'],
    ['<a/>text', 'not one element'],
    ['<a>x & y</a>', 'ampersand'],
    ['<a>&unknown;</a>', 'ampersand'],
    ['<a b=1/>', 'break off'],
    ['<a b="<"/>', 'break off'],
    ['<a', 'break off'],
  ])('is refused in %s', (source, problem) => {
    expect((readXml(source) as { problem: string }).problem).toContain(problem);
  });
});
