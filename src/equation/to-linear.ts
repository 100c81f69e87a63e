import { quantityText, superscript } from '../units/index.ts';
import { exponentText } from './exponent-text.ts';
import type {
  Bracket,
  Call,
  Expression,
  Figure,
  Integral,
  Power,
  Product,
  Quotient,
  Sum,
  SumOf,
  Symbol,
} from './expression.ts';
import { bindingOf, factorInParentheses, isLooser, openFactors } from './precedence.ts';
import type { StatementLine } from './statement.ts';

/**
 * An expression as one line of readable text, for copying and for terminals:
 * `−8.4 kip (6 ft) + R_C (21 ft)`. Every grouping that fractions show is shown by parentheses.
 */
export function toLinear(expression: Expression): string {
  return write(expression, true);
}

/** A statement line as one line of readable text: `ΣM_A = −8.4 kip (6 ft) + R_C (21 ft) = 0`. */
export function lineToLinear(line: StatementLine): string {
  const links = line.chain.map(({ sign, of }) => `${sign} ${toLinear(of)}`);
  return [...(line.left === undefined ? [] : [toLinear(line.left)]), ...links].join(
    ' ',
  );
}

/** A symbol as text: `R_C`, `x̄_2`, `θ`. */
export function symbolText(symbol: Symbol): string {
  const bar = symbol.bar === true ? '\u0304' : '';
  const subscript = symbol.subscript ?? '';
  const primes = ['', '′', '″', '‴'][symbol.primes ?? 0] ?? '';
  return `${symbol.letter}${bar}${primes}${subscript === '' ? '' : `_${subscript}`}`;
}

// `isLeading` is false after an operator, where a minus must stand in parentheses.
function write(expression: Expression, isLeading: boolean): string {
  switch (expression.kind) {
    case 'figure':
      return writeFigure(expression, isLeading);
    case 'name':
      return symbolText(expression.symbol);
    case 'sum':
      return writeSum(expression, isLeading);
    case 'product':
      return writeProduct(expression, isLeading);
    case 'quotient':
      return writeQuotient(expression, isLeading);
    case 'power':
      return writePower(expression);
    case 'bracket':
      return writeBracket(expression);
    case 'call':
      return writeCall(expression);
    case 'function-of':
      return `${symbolText(expression.symbol)}${parenthesised(expression.argument)}`;
    case 'integral':
      return writeIntegral(expression);
    case 'sum-of':
      return writeHeading(expression);
  }
}

function parenthesised(expression: Expression): string {
  return `(${toLinear(expression)})`;
}

function writeFigure(figure: Figure, isLeading: boolean): string {
  const text = quantityText(figure.quantity, figure.unit, figure.print);
  const written = text.replaceAll('\u00a0', ' ');
  return isLeading || bindingOf(figure) !== 'sum' ? written : `(${written})`;
}

function writeSum(sum: Sum, isLeading: boolean): string {
  if (!isLeading) return parenthesised(sum);
  if (sum.terms.length === 0) return '0';
  return sum.terms
    .map(({ sign, of }, index) => {
      const term = write(of, index === 0 && sign === 1);
      if (index === 0) return sign === 1 ? term : `−${term}`;
      return `${sign === 1 ? '+' : '−'} ${term}`;
    })
    .join(' ');
}

function writeProduct(product: Product, isLeading: boolean): string {
  const factors = openFactors(product.factors);
  return factors
    .map((factor, index) => {
      const isOpen = factor.kind === 'quotient' || factor.kind === 'integral';
      const place = { isFirst: index === 0, isLeading };
      return (isOpen && factors.length > 1) || factorInParentheses(factor, place)
        ? parenthesised(factor)
        : toLinear(factor);
    })
    .join(' ');
}

function writeQuotient({ over, under }: Quotient, isLeading: boolean): string {
  const isOpen =
    over.kind === 'sum' || over.kind === 'quotient' || over.kind === 'integral';
  const above = isOpen ? parenthesised(over) : write(over, isLeading);
  return `${above} / ${isLooser(under, 'power') ? parenthesised(under) : toLinear(under)}`;
}

function writePower({ base, exponent }: Power): string {
  const written = isLooser(base, 'atom') ? parenthesised(base) : toLinear(base);
  if (Number.isInteger(exponent) && exponent >= 0) {
    return `${written}${superscript(exponent)}`;
  }
  return `${written}^(${exponentText(exponent)})`;
}

function writeBracket({ of, exponent }: Bracket): string {
  return `⟨${toLinear(of)}⟩${superscript(exponent)}`;
}

function writeCall({ of, argument }: Call): string {
  switch (of) {
    case 'sqrt':
      return `√${parenthesised(argument)}`;
    case 'abs':
      return `|${toLinear(argument)}|`;
    case 'sin':
    case 'cos':
    case 'tan':
      return `${of}${parenthesised(argument)}`;
  }
}

function writeIntegral({ from, to, of, variable }: Integral): string {
  const integrand = of.kind === 'sum' ? parenthesised(of) : toLinear(of);
  const limits = `(${toLinear(from)} to ${toLinear(to)})`;
  return `∫${limits} ${integrand} d${symbolText(variable)}`;
}

function writeHeading({ what }: SumOf): string {
  if (what.kind === 'moments') return `ΣM_${what.about}`;
  return what.positive === 'up' || what.positive === 'down' ? 'ΣF_y' : 'ΣF_x';
}
