import { describe, expect, test } from 'vitest';
import { readLine } from '../../../src/review/reading/read-line.ts';

/** An expression with a bracket round every operation, so that its build shows. */
function build(text: string): string {
  const link = readLine(text, ['a', 'b', 'c', 'd']).readings?.[0]?.links[0];
  const show = (of: NonNullable<typeof link>): string => {
    switch (of.kind) {
      case 'number':
        return String(of.quantity.si);
      case 'name':
        return of.name;
      case 'sum':
        return `[${of.terms.map(({ sign, of: term }) => `${sign < 0 ? '-' : '+'}${show(term)}`).join('')}]`;
      case 'product':
        return `(${of.factors.map(show).join('*')})`;
      case 'quotient':
        return `(${show(of.over)}/${show(of.under)})`;
      case 'power':
        return `${show(of.base)}^${of.exponent}`;
      case 'call':
        return `${of.of}{${show(of.argument)}}`;
    }
  };
  return link === undefined ? 'unread' : show(link);
}

describe('the build of an expression', () => {
  test.each([
    ['a + b * c', '[+a+(b*c)]'],
    ['a - b / c', '[+a-(b/c)]'],
    ['a / b / c', '((a/b)/c)'],
    ['-a^2', '[-a^2]'],
    ['a - -b', '[+a+b]'],
    ['a (b + c)', '(a*[+b+c])'],
    ['sqrt(a b)', 'sqrt{(a*b)}'],
    ['a [b − c]', '(a*[+b-c])'],
  ])('%s is %s', (text, shown) => {
    expect(build(text)).toBe(shown);
  });

  test.each([
    ['a + ', 'A term is missing'],
    ['a * / b', 'cannot stand here'],
    ['(a', 'a bracket is not closed'],
    ['a)', 'cannot stand here'],
    ['a ^ b', 'an exponent must be a plain number'],
    ['a = ', 'something is missing here'],
  ])('%s is not read', (text, why) => {
    const { fault } = readLine(text, ['a', 'b']);
    expect(fault?.kind).toBe('syntax');
    expect(fault?.message.toLowerCase()).toContain(why.toLowerCase());
  });
});
