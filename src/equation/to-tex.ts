import { exponentText } from './exponent-text.ts';
import type {
  Bracket,
  Call,
  Expression,
  Figure,
  Integral,
  Power,
  Product,
  Sum,
  SumOf,
} from './expression.ts';
import { bindingOf, factorInParentheses, isLooser, openFactors } from './precedence.ts';
import { figureToTex } from './tex-figure.ts';
import { subscriptToTex, symbolToTex } from './tex-symbol.ts';

/**
 * An expression as TeX for the typesetter: units upright after a thin space, the first factor of a
 * product bare and later figures in parentheses, quotients as fractions, cancelled units struck through.
 */
export function toTex(expression: Expression): string {
  return write(expression, true);
}

// `isLeading` is false after an operator, where a minus must stand in parentheses.
function write(expression: Expression, isLeading: boolean): string {
  switch (expression.kind) {
    case 'figure':
      return writeFigure(expression, isLeading);
    case 'name':
      return symbolToTex(expression.symbol);
    case 'sum':
      return writeSum(expression, isLeading);
    case 'product':
      return writeProduct(expression, isLeading);
    case 'quotient':
      return `\\frac{${toTex(expression.over)}}{${toTex(expression.under)}}`;
    case 'power':
      return writePower(expression);
    case 'bracket':
      return writeBracket(expression);
    case 'call':
      return writeCall(expression);
    case 'function-of':
      return `${symbolToTex(expression.symbol)}${parenthesised(expression.argument)}`;
    case 'integral':
      return writeIntegral(expression);
    case 'sum-of':
      return writeHeading(expression);
  }
}

function writeFigure(figure: Figure, isLeading: boolean): string {
  return isLeading || bindingOf(figure) !== 'sum'
    ? figureToTex(figure)
    : `(${figureToTex(figure)})`;
}

function writeIntegral({ from, to, of, variable }: Integral): string {
  const integrand = of.kind === 'sum' ? parenthesised(of) : toTex(of);
  const limits = `_{${toTex(from)}}^{${toTex(to)}}`;
  return `\\int${limits} ${integrand}\\,\\mathrm{d}${symbolToTex(variable)}`;
}

function writeSum(sum: Sum, isLeading: boolean): string {
  if (!isLeading) return parenthesised(sum);
  if (sum.terms.length === 0) return '0';
  return sum.terms
    .map(({ sign, of, isSetOff }, index) => {
      const isBare = index === 0 && sign === 1;
      const term = write(of, isBare);
      if (isSetOff === true) return setOff({ sign, term, isFirst: index === 0 });
      if (index === 0) return sign === 1 ? term : `-${term}`;
      return `${sign === 1 ? '+' : '-'} ${term}`;
    })
    .join(' ');
}

/** A term underlined together with its sign; the spaces are those that a sign has of itself outside of a line. */
function setOff({
  sign,
  term,
  isFirst,
}: {
  readonly sign: 1 | -1;
  readonly term: string;
  readonly isFirst: boolean;
}): string {
  if (isFirst) return `\\underline{${sign === 1 ? '' : '-'}${term}}`;
  return `\\;\\underline{{${sign === 1 ? '+' : '-'}}\\;${term}}`;
}

function writeProduct(product: Product, isLeading: boolean): string {
  const factors = openFactors(product.factors);
  return factors
    .map((factor, index) => {
      const place = { isFirst: index === 0, isLeading };
      const runsOn = factor.kind === 'integral' && index < factors.length - 1;
      return runsOn || factorInParentheses(factor, place)
        ? parenthesised(factor)
        : toTex(factor);
    })
    .join('\\,');
}

function writePower({ base, exponent }: Power): string {
  const written =
    isLooser(base, 'atom') || base.kind === 'call' ? parenthesised(base) : toTex(base);
  return `${written}^{${exponentText(exponent)}}`;
}

function writeBracket({ of, exponent }: Bracket): string {
  const inner = toTex(of);
  const angled = isTall(of)
    ? `\\left\\langle ${inner} \\right\\rangle`
    : `\\langle ${inner} \\rangle`;
  return `${angled}^{${exponentText(exponent)}}`;
}

function writeCall({ of, argument }: Call): string {
  switch (of) {
    case 'sqrt':
      return `\\sqrt{${toTex(argument)}}`;
    case 'abs':
      return `\\left|${toTex(argument)}\\right|`;
    case 'sin':
    case 'cos':
    case 'tan':
      return `\\${of}${parenthesised(argument)}`;
  }
}

// Arrows are small ordinary marks in front of the sum sign, the plus on them: which sense counts positive.
function writeHeading({ what }: SumOf): string {
  if (what.kind === 'moments') {
    const arrow =
      what.positive === 'counterclockwise' ? '\\circlearrowleft' : '\\circlearrowright';
    return `{\\overset{+}{${arrow}}}\\,\\sum M_{${subscriptToTex(what.about)}}`;
  }
  const arrows = {
    right: '{\\overset{+}{\\rightarrow}}',
    left: '{\\overset{+}{\\leftarrow}}',
    up: '{+}{\\uparrow}',
    down: '{+}{\\downarrow}',
  } as const;
  const axis = what.positive === 'up' || what.positive === 'down' ? 'y' : 'x';
  return `${arrows[what.positive]}\\,\\sum F_{${axis}}`;
}

function parenthesised(expression: Expression): string {
  const inner = toTex(expression);
  return isTall(expression) ? `\\left(${inner}\\right)` : `(${inner})`;
}

// True where plain parentheses would be too small.
function isTall(expression: Expression): boolean {
  switch (expression.kind) {
    case 'quotient':
    case 'integral':
    case 'sum-of':
      return true;
    case 'sum':
      return expression.terms.some((term) => isTall(term.of));
    case 'product':
      return expression.factors.some(isTall);
    case 'power':
      return isTall(expression.base);
    case 'bracket':
      return isTall(expression.of);
    case 'call':
    case 'function-of':
      return isTall(expression.argument);
    case 'figure':
    case 'name':
      return false;
  }
}
