import type { Written } from './written.ts';

/** The same expression with some of its parts replaced: what `replacement` gives stands in their place. */
export function replaceWritten(
  of: Written,
  replacement: (part: Written) => Written | undefined,
): Written {
  const own = replacement(of);
  if (own !== undefined) return own;
  const inside = (part: Written): Written => replaceWritten(part, replacement);
  switch (of.kind) {
    case 'number':
    case 'name':
      return of;
    case 'sum':
      return {
        ...of,
        terms: of.terms.map(({ sign, of: term }) => ({ sign, of: inside(term) })),
      };
    case 'product':
      return { ...of, factors: of.factors.map(inside) };
    case 'quotient':
      return { ...of, over: inside(of.over), under: inside(of.under) };
    case 'power':
      return { ...of, base: inside(of.base) };
    case 'call':
      return { ...of, argument: inside(of.argument) };
  }
}
