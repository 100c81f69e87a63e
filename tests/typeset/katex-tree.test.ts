import { describe, expect, test } from 'vitest';
import type { EquationNode } from '../../src/typeset/equation-node.ts';
import { readEquation } from '../../src/typeset/katex-tree.ts';
import { draw, textOf } from '../support/equations.ts';

function kindsIn(node: EquationNode): readonly string[] {
  if (node.kind === 'row') return ['row', ...node.children.flatMap(kindsIn)];
  if (node.kind === 'stack')
    return ['stack', ...node.lines.flatMap((l) => kindsIn(l.node))];
  if (node.kind === 'lap' || node.kind === 'poor-bold') {
    return [node.kind, ...kindsIn(node.child)];
  }
  return [node.kind];
}

function kindsOf(tex: string): ReadonlySet<string> {
  const { lines } = readEquation(tex, true);
  return new Set(lines.flatMap(({ nodes }) => nodes.flatMap(kindsIn)));
}

describe('reading KaTeX’s tree', () => {
  test.each([
    ['x', 'glyphs'],
    ['\\frac{a}{b}', 'bar'],
    ['\\rule{1em}{1em}', 'rule'],
    ['\\begin{array}{c|c}a&b\\end{array}', 'separator'],
    ['\\boxed{x}', 'frame'],
    ['\\sqrt{x}', 'picture'],
    ['\\mathllap{x}', 'lap'],
    ['\\pmb{x}', 'poor-bold'],
    ['x^2', 'stack'],
  ])('%s holds a node of kind %s', (tex, kind) => {
    expect(kindsOf(tex)).toContain(kind);
  });

  test.each([
    ['\\reflectbox{x}', '\\reflectbox'],
    ['\\begin{CD}A @>a>> B\\end{CD}', 'a commutative diagram (CD)'],
    ['\\begin{align}a&=b\\end{align}', 'an automatic equation number'],
    ['\\href{https://example.org}{x}', '\\href'],
    ['\\url{https://example.org}', '\\url'],
    ['\\includegraphics{a.png}', '\\includegraphics'],
    ['\\htmlClass{a}{x}', '\\htmlClass'],
    ['{a\\\\b}', 'a line break inside a group'],
    ['\\text{µ}', '"µ" (U+00B5)'],
    ['\\text{漢}', '"漢" (U+6F22)'],
    ['½', '"½" (U+00BD)'],
    ['\\textcolor{papayawhip}{x}', 'the colour "papayawhip"'],
    ['\\textcolor{#0f08}{x}', 'the colour "#0f08"'],
    ['\\frac{a}', 'the TeX ('],
    ['\\nosuchcommand', '\\nosuchcommand'],
    ['\\show x', '\\show'],
    ['50% of x', 'LaTeX-incompatible input'],
    ['\\left(x', 'the TeX ('],
  ])('%s is refused, naming %s', (tex, construct) => {
    expect(() => draw(tex)).toThrow(construct);
    expect(() => draw(tex)).toThrow(tex);
  });

  test('a fraction is drawn from its numerator down', () => {
    expect(textOf(draw('\\frac{a}{b}'))).toBe('ab');
    expect(textOf(draw('\\frac{1}{\\frac{2}{3}}'))).toBe('123');
  });

  test('a line break on the outer level begins a new line', () => {
    expect(readEquation('a\\\\b\\\\[1em]c', false).lines).toHaveLength(3);
    expect(readEquation('a\\\\[1em]b', false).lines[1]?.gapAbove).toBeCloseTo(1, 6);
  });

  test('the tag is read apart from the equation', () => {
    expect(readEquation('a=b\\tag{1}', true).tag).toBeDefined();
    expect(readEquation('a=b', true).tag).toBeUndefined();
  });

  test('a macro defined in one equation is unknown in the next', () => {
    expect(textOf(draw('\\gdef\\mine{q}\\mine'))).toBe('q');
    expect(() => draw('\\mine')).toThrow('\\mine');
  });
});
