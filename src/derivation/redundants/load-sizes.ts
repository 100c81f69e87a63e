import { name, type Expression, type Symbol } from '../../equation/index.ts';
import type { SpanLoad, SpreadLoad } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { componentSymbol, sizeFigure } from '../load-figures.ts';
import { value } from '../printing.ts';

/** A size in symbols and in numbers. */
interface Size {
  readonly symbolic: Expression;
  readonly numeric: Expression;
}

/** The size of a load as its formula speaks of it, and the sign that its sense gives it. */
export interface LoadSize {
  readonly sign: 1 | -1;
  /** A force, a couple, the resultant of a spread load; of a slanted one its part across the beam. */
  readonly size: Size;
  /** The intensity of a spread load, where one formula holds for all of it. */
  readonly intensity?: Size;
}

/** Sizes of a load of a span: forces downward positive, couples counterclockwise. */
export function sizeOfLoad(context: CaseContext, load: SpanLoad): LoadSize {
  switch (load.kind) {
    case 'couple':
      return {
        sign: load.couple < 0 ? -1 : 1,
        size: {
          symbolic: name(context.symbols.load(load.id)),
          numeric: sizeFigure(context, load.id, 'moment', Math.abs(load.couple)),
        },
      };
    case 'force':
      return sizeOfForce(context, load);
    case 'uniform':
    case 'triangle':
      return sizeOfSpread(context, load);
  }
}

function sizeOfForce(
  context: CaseContext,
  { id, force }: Extract<SpanLoad, { kind: 'force' }>,
): LoadSize {
  const own = context.structure.loads.find((one) => one.id === id);
  const isSlanted = own?.kind === 'point' && own.fx !== 0;
  const size = Math.abs(force);
  return {
    sign: force < 0 ? -1 : 1,
    size: {
      symbolic: name(across(context.symbols.load(id), isSlanted)),
      numeric: isSlanted
        ? value(context.printing, 'force', size)
        : sizeFigure(context, id, 'force', size),
    },
  };
}

function across(symbol: Symbol, isSlanted: boolean): Symbol {
  return isSlanted ? componentSymbol(symbol, 'y') : symbol;
}

function sizeOfSpread(context: CaseContext, load: SpreadLoad): LoadSize {
  const { id, kind, resultant } = load;
  const { symbols, printing } = context;
  const share = context.shareOf(id, resultant);
  const [dx, dy] = resultant.direction;
  const isSlanted = dx !== 0;
  const sign = load.intensity < 0 ? -1 : 1;
  const size = {
    symbolic: name(across(symbols.load(id, share), isSlanted)),
    numeric: value(printing, 'force', resultant.magnitude * Math.abs(dy)),
  };
  const isOneShape = kind === 'triangle' || isUniform(context, id);
  if (isSlanted || !isOneShape) return { sign, size };
  const intensity = {
    symbolic: name(symbols.intensity(id, kind === 'uniform' ? '' : share)),
    numeric: sizeFigure(context, id, 'force-per-length', Math.abs(load.intensity)),
  };
  return { sign, size, intensity };
}

/** True of a load that is uniform throughout, not a rectangle under a slope. */
function isUniform({ structure }: CaseContext, id: string): boolean {
  const load = structure.loads.find((one) => one.id === id);
  return load?.kind === 'distributed' && load.y1 === load.y2 && load.x1 === load.x2;
}
