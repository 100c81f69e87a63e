import { greekNames } from './greek.ts';
import type {
  Bracket,
  Call,
  Expression,
  Integral,
  Power,
  Product,
  Quotient,
  Sum,
  SumOf,
  Symbol,
} from './expression.ts';
import { exponentText } from './exponent-text.ts';
import { bindingOf, openFactors } from './precedence.ts';
import { speakFigure } from './speak-figure.ts';
import type { RelationSign, StatementLine } from './statement.ts';

const relations: Readonly<Record<RelationSign, string>> = {
  '=': 'equals',
  '≈': 'is about equal to',
  '≤': 'is at most',
  '≥': 'is at least',
  '<': 'is less than',
  '>': 'is greater than',
  '≠': 'is not equal to',
};

/**
 * An expression as an engineer would read it out, for a screen reader: `minus 8.4 kip times 6 ft plus
 * R sub C times 21 ft`.
 */
export function toSpeech(expression: Expression): string {
  return speak(expression, true);
}

/**
 * A statement line read out: `the sum of the moments about A, counterclockwise positive, equals minus 8.4 kip
 * times 6 ft plus R sub C times 21 ft, equals 0`.
 */
export function lineToSpeech(line: StatementLine): string {
  const links = line.chain.map(({ sign, of }) => `${relations[sign]} ${toSpeech(of)}`);
  const chain = links.join(', ');
  return line.left === undefined ? chain : `${toSpeech(line.left)} ${chain}`;
}

// `isLeading` is false after an operator, where a minus is called negative: "minus negative 3 kip".
function speak(expression: Expression, isLeading: boolean): string {
  switch (expression.kind) {
    case 'figure':
      return speakFigure(expression, isLeading);
    case 'name':
      return speakSymbol(expression.symbol);
    case 'sum':
      return speakSum(expression, isLeading);
    case 'product':
      return speakProduct(expression, isLeading);
    case 'quotient':
      return speakQuotient(expression);
    case 'power':
      return speakPower(expression);
    case 'bracket':
      return speakBracket(expression);
    case 'call':
      return speakCall(expression);
    case 'function-of':
      return `${speakSymbol(expression.symbol)} of ${toSpeech(expression.argument)}`;
    case 'integral':
      return speakIntegral(expression);
    case 'sum-of':
      return speakHeading(expression);
  }
}

function parenthesised(expression: Expression): string {
  return `open parenthesis ${toSpeech(expression)} close parenthesis`;
}

function speakSymbol({ letter, subscript, bar, primes }: Symbol): string {
  const named = greekNames.get(letter)?.replace(/^var/, '') ?? letter;
  const primed = `${named}${['', ' prime', ' double prime', ' triple prime'][primes ?? 0] ?? ''}`;
  const barred = bar === true ? `${primed} bar` : primed;
  if (subscript === undefined || subscript === '') return barred;
  return `${barred} sub ${greekNames.get(subscript) ?? subscript}`;
}

function speakSum(sum: Sum, isLeading: boolean): string {
  if (!isLeading) return parenthesised(sum);
  if (sum.terms.length === 0) return '0';
  return sum.terms
    .map(({ sign, of }, index) => {
      const term = speak(of, index === 0 && sign === 1);
      if (index === 0) return sign === 1 ? term : `minus ${term}`;
      return `${sign === 1 ? 'plus' : 'minus'} ${term}`;
    })
    .join(' ');
}

function speakProduct(product: Product, isLeading: boolean): string {
  return openFactors(product.factors)
    .map((factor, index) =>
      factor.kind === 'sum' || factor.kind === 'integral'
        ? parenthesised(factor)
        : speak(factor, isLeading && index === 0),
    )
    .join(' times ');
}

function speakQuotient({ over, under }: Quotient): string {
  const isSimple = (part: Expression): boolean =>
    part.kind === 'figure' || bindingOf(part) === 'atom';
  const said = `${toSpeech(over)} over ${toSpeech(under)}`;
  return isSimple(over) && isSimple(under)
    ? said
    : `the fraction ${said}, end of fraction,`;
}

function speakPower({ base, exponent }: Power): string {
  const said = bindingOf(base) === 'atom' ? toSpeech(base) : parenthesised(base);
  if (exponent === 2) return `${said} squared`;
  if (exponent === 3) return `${said} cubed`;
  return `${said} to the power ${exponentText(exponent)}`.replace('-', 'minus ');
}

function speakBracket({ of, exponent }: Bracket): string {
  const said = `open angle bracket ${toSpeech(of)} close angle bracket`;
  if (exponent === 1) return said;
  if (exponent === 2) return `${said} squared`;
  if (exponent === 3) return `${said} cubed`;
  return `${said} to the power ${exponentText(exponent)}`;
}

function speakCall({ of, argument }: Call): string {
  const names = {
    sin: 'the sine of',
    cos: 'the cosine of',
    tan: 'the tangent of',
    sqrt: 'the square root of',
    abs: 'the absolute value of',
  } as const;
  const isSimple = argument.kind === 'figure' || bindingOf(argument) === 'atom';
  return `${names[of]} ${isSimple ? toSpeech(argument) : parenthesised(argument)}`;
}

function speakIntegral({ from, to, of, variable }: Integral): string {
  const limits = `from ${toSpeech(from)} to ${toSpeech(to)}`;
  return `the integral ${limits} of ${toSpeech(of)} with respect to ${speakSymbol(variable)}`;
}

function speakHeading({ what }: SumOf): string {
  if (what.kind === 'moments') {
    return `the sum of the moments about ${what.about}, ${what.positive} positive,`;
  }
  const directions = {
    right: 'horizontal forces, to the right positive,',
    left: 'horizontal forces, to the left positive,',
    up: 'vertical forces, upward positive,',
    down: 'vertical forces, downward positive,',
  } as const;
  return `the sum of the ${directions[what.positive]}`;
}
