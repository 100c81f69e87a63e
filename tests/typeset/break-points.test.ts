import { describe, expect, test } from 'vitest';
import { findSegments } from '../../src/typeset/break-points.ts';
import type { EquationNode } from '../../src/typeset/equation-node.ts';
import { readEquation } from '../../src/typeset/katex-tree.ts';

function textOf(node: EquationNode): string {
  if (node.kind === 'glyphs') return node.text;
  if (node.kind === 'row') return node.children.map(textOf).join('');
  if (node.kind === 'stack')
    return node.lines.map((line) => textOf(line.node)).join('');
  return '';
}

/** Each segment as `level start text`. */
function segmentsOf(tex: string): readonly string[] {
  const nodes = readEquation(tex, true).lines[0]!.nodes;
  return findSegments(nodes).map(
    ({ level, startsWith, nodes: own }) =>
      `${level} ${startsWith} ${own.map(textOf).join('').trim()}`,
  );
}

describe('where an equation may be broken', () => {
  test('before relations, terms and factors', () => {
    expect(segmentsOf('M=a+b-c\\cdot d')).toEqual([
      '0 other M',
      '0 relation =a',
      '0 term +b',
      '0 term −c',
      '0 factor ⋅d',
    ]);
  });

  test('not before a sign that leads, nor between two signs', () => {
    expect(segmentsOf('-a=-b')).toEqual(['0 other −a', '0 relation =−b']);
    expect(segmentsOf('a\\le\\ge b')).toEqual(['0 other a', '0 relation ≤≥b']);
  });

  test('brackets raise the level, written or stretched', () => {
    expect(segmentsOf('a(b+c)d')).toEqual(['0 other a(b', '1 term +c)d']);
    expect(segmentsOf('\\left(b+c\\right)+d').map((line) => line.slice(0, 6))).toEqual([
      '1 othe',
      '2 term',
      '0 term',
    ]);
  });

  test('never inside a fraction, a root, a box or a script', () => {
    expect(segmentsOf('\\frac{a+b}{c}\\sqrt{a+b}\\boxed{a=b}x^{a+b}')).toHaveLength(1);
  });

  test('where the TeX forbids or allows it', () => {
    expect(segmentsOf('a\\nobreak+b')).toHaveLength(1);
    expect(segmentsOf('a\\allowbreak b')).toEqual(['0 other a', '0 other b']);
  });

  test('the space before a sign is its own, the space after belongs to its head', () => {
    const nodes = readEquation('a=b', true).lines[0]!.nodes;
    const [, relation] = findSegments(nodes);
    expect(relation!.gap).toHaveLength(1);
    expect(relation!.headLength).toBe(2);
    expect(relation!.nodes.map((node) => node.role)).toEqual([
      'relation',
      'space',
      'other',
    ]);
  });

  test('no node is lost', () => {
    const nodes = readEquation('a=b+c\\cdot d\\le e', true).lines[0]!.nodes;
    const kept = findSegments(nodes).flatMap(({ gap, nodes: own }) => [...gap, ...own]);
    expect(kept).toEqual(nodes);
  });
});
