import type { Unit } from '../units/index.ts';
import { comparePrinted, isEquality } from './compare-printed.ts';
import type { SymbolValues } from './evaluate.ts';
import { isNumeric } from './is-numeric.ts';
import { linksOf, replaceLink, type Link } from './links.ts';
import { raiseFigures } from './raise-figures.ts';
import type { Statement } from './statement.ts';

/** What working one printed relation again from its printed figures gave. */
export interface RecheckedLink {
  /** The line, from 0, and which relation of its chain, from 0. */
  readonly line: number;
  readonly link: number;
  readonly agrees: boolean;
  /** How far the two sides lie apart as printed (for ≤ and its like: by how much it fails), in `unit`. */
  readonly off: number;
  /** How far they may, in `unit`. */
  readonly allowed: number;
  readonly unit: Unit;
  /** How many more figures would make it agree, 0 where it does; null where no number of them would. */
  readonly needs: number | null;
}

/** No figure is raised by more than this. */
const mostRaised = 10;

/**
 * Reworks every printed relation of a statement from the figures as they are printed. An equality must
 * land within one unit of the last printed place of the figure after it; a closure, and an equality that ends
 * in zero or in no single figure, must be possible within the rounding of its printed figures; an inequality
 * must hold as printed and exactly. Relations with a heading or with a symbol that `values` does not know are
 * left out; known symbols count exactly. Sides of unlike dimensions are a programmer's mistake, a RangeError.
 */
export function recheck(
  statement: Statement,
  values: SymbolValues = new Map(),
): readonly RecheckedLink[] {
  return numericLinks(statement, values).map((link) => recheckLink(link, values));
}

function numericLinks(statement: Statement, values: SymbolValues): readonly Link[] {
  return linksOf(statement).filter(
    ({ from, to }) => isNumeric(from, values) && isNumeric(to, values),
  );
}

function recheckLink(link: Link, values: SymbolValues): RecheckedLink {
  const { agrees, off, allowed, unit } = comparePrinted(link, values);
  return {
    line: link.line,
    link: link.index,
    agrees,
    off: off / unit.inSi,
    allowed: allowed / unit.inSi,
    unit,
    needs: agrees ? 0 : figuresNeeded(link, values),
  };
}

function figuresNeeded(link: Link, values: SymbolValues): number | null {
  for (let more = 1; more <= mostRaised; more += 1) {
    if (comparePrinted(raiseLink(link, more), values).agrees) return more;
  }
  return null;
}

// Before an equality the figures it is worked from; around an inequality both sides.
function raiseLink(link: Link, more: number): Link {
  const from = raiseFigures(link.from, more);
  return isEquality(link.sign)
    ? { ...link, from }
    : { ...link, from, to: raiseFigures(link.to, more) };
}

/**
 * The statement with as many figures as make every relation agree when it is reworked from the page.
 * Only computed figures on the lines that need it change; given ones never do. Relations are mended from the
 * last to the first, because a figure raised for one relation is the result of the one before. A relation
 * that no number of figures mends stays as it is: ask `recheck`.
 */
export function withEnoughFigures(
  statement: Statement,
  values: SymbolValues = new Map(),
): Statement {
  const last = numericLinks(statement, values).length - 1;
  let mended = statement;
  for (let index = last; index >= 0; index -= 1) {
    // Read again each time: the relation after may have raised this one's result.
    const link = numericLinks(mended, values)[index];
    if (link === undefined || comparePrinted(link, values).agrees) continue;
    const more = figuresNeeded(link, values);
    if (more !== null) mended = replaceLink(mended, raiseLink(link, more));
  }
  return mended;
}
