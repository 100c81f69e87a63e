import {
  exactly,
  type Expression,
  type Figure,
  type Statement,
} from '../../equation/index.ts';
import {
  divideUnits,
  quantity,
  sameUnit,
  pureUnit,
  type Unit,
} from '../../units/index.ts';

/**
 * Lines worked under a load of size 1, told a unit of it: every force and moment in them is divided by
 * the load's unit, lengths and angles stay. A force of 1 becomes a bare 1.
 */
export function perUnit(statement: Statement, load: Unit): Statement {
  return {
    lines: statement.lines.map((line) => ({
      ...line,
      ...(line.left === undefined ? {} : { left: turned(line.left, load) }),
      chain: line.chain.map(({ sign, of }) => ({ sign, of: turned(of, load) })),
    })),
  };
}

function turned(of: Expression, load: Unit): Expression {
  switch (of.kind) {
    case 'figure':
      return perUnitFigure(of, load);
    case 'sum':
      return {
        ...of,
        terms: of.terms.map((term) => ({ ...term, of: turned(term.of, load) })),
      };
    case 'product':
      return { ...of, factors: of.factors.map((factor) => turned(factor, load)) };
    case 'quotient':
      return { ...of, over: turned(of.over, load), under: turned(of.under, load) };
    case 'name':
    case 'power':
    case 'call':
    case 'function-of':
    case 'integral':
    case 'bracket':
    case 'sum-of':
      return of;
  }
}

/** One figure a unit of the load. */
export function perUnitFigure(of: Figure, load: Unit): Figure {
  if (of.quantity.dimension.force === 0) return plain(of);
  const unit = divideUnits(of.unit, load);
  const si = of.quantity.si;
  if (sameUnit(of.unit, load) && Math.abs(Math.abs(si) - 1) < 1e-12)
    return exactly(Math.sign(si), pureUnit);
  return {
    kind: 'figure',
    quantity: quantity(si / unit.inSi, unit),
    unit,
    print: printOf(of),
  };
}

/** Units struck through were struck against forces: they stand as they are again. */
function plain({ kind, quantity: of, unit, print }: Figure): Figure {
  return { kind, quantity: of, unit, print };
}

function printOf({ print }: Figure): Figure['print'] {
  return print.kind === 'given' ? { kind: 'figures', count: 4 } : print;
}
