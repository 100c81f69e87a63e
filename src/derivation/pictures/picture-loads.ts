import type { Label, PictureLoad } from '../../figure/index.ts';
import type { DistributedLoad, Load } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { degreesOf } from '../direction.ts';
import { sizeFigure } from '../load-figures.ts';
import { equalsLabel, symbolLabel } from './labels.ts';

/** A load as drawn: with its size on the member as loaded, by its symbol alone on a free body. */
export function pictureLoad(
  context: MemberContext,
  load: Load,
  shows: 'size' | 'symbol',
): PictureLoad {
  const { symbols } = context;
  switch (load.kind) {
    case 'point': {
      const size = Math.hypot(load.fx, load.fy);
      const symbol = symbols.load(load.id);
      return {
        kind: 'force',
        case: load.case,
        x: load.x,
        degrees: size === 0 ? 270 : degreesOf([load.fx, load.fy]),
        size,
        label:
          shows === 'size'
            ? equalsLabel(symbol, sizeFigure(context, load.id, 'force', size))
            : symbolLabel(symbol),
      };
    }
    case 'couple': {
      const symbol = symbols.load(load.id);
      const size = Math.abs(load.m);
      return {
        kind: 'couple',
        case: load.case,
        x: load.x,
        turn: load.m < 0 ? 'clockwise' : 'counterclockwise',
        size,
        label:
          shows === 'size'
            ? equalsLabel(symbol, sizeFigure(context, load.id, 'moment', size))
            : symbolLabel(symbol),
      };
    }
    case 'distributed':
      return distributed(context, load, shows);
  }
}

function distributed(
  context: MemberContext,
  load: DistributedLoad,
  shows: 'size' | 'symbol',
): PictureLoad {
  const { x1, y1, x2, y2 } = load;
  const isFirst = Math.hypot(x1, y1) >= Math.hypot(x2, y2);
  const lead: readonly [number, number] = isFirst ? [x1, y1] : [x2, y2];
  const length = Math.hypot(...lead);
  const direction: readonly [number, number] =
    length === 0 ? [0, -1] : [lead[0] / length, lead[1] / length];
  const along = (x: number, y: number): number => x * direction[0] + y * direction[1];
  const sizes: readonly [number, number] = [along(x1, y1), along(x2, y2)];
  const symbol = context.symbols.intensity(load.id);
  const label = (si: number): Label =>
    shows === 'size'
      ? equalsLabel(symbol, sizeFigure(context, load.id, 'force-per-length', si))
      : symbolLabel(symbol);
  const isUniform = sizes[0] === sizes[1];
  const second =
    sizes[1] === 0 || (shows === 'symbol' && sizes[0] !== 0)
      ? undefined
      : label(sizes[1]);
  return {
    kind: 'distributed',
    case: load.case,
    from: load.from,
    to: load.to,
    degrees: degreesOf(direction),
    sizes,
    labels: isUniform
      ? [label(sizes[0]), undefined]
      : [sizes[0] === 0 ? undefined : label(sizes[0]), second],
  };
}
