import type { FigureSpec, PictureLoad } from '../../figure/index.ts';
import {
  partsOf,
  termsOfSum,
  wholeOf,
  type Load,
  type Part,
} from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { describeFreeBody, describeMember, describePieces } from './alternates.ts';
import { memberPicture, pictureReactions, pictureSupports } from './member-picture.ts';
import { pictureLoad } from './picture-loads.ts';

/** The member as loaded: supports as symbols, every load of every case with its given size. */
export function asLoadedFigure(context: MemberContext): FigureSpec {
  const picture = memberPicture(context, {
    supports: pictureSupports(context),
    loads: context.structure.loads.map((load) => pictureLoad(context, load, 'size')),
    reactions: [],
  });
  return { kind: 'member', picture, alternate: describeMember(context) };
}

/** The whole member set free: unknowns in their positive sense for the supports, loads by their symbols. */
export function freeBodyFigure(context: MemberContext): FigureSpec {
  const picture = memberPicture(context, {
    supports: [],
    loads: context.structure.loads.map((load) => pictureLoad(context, load, 'symbol')),
    reactions: pictureReactions(context, wholeOf(context.structure)),
  });
  return {
    kind: 'free-body',
    pictures: [picture],
    alternate: describeFreeBody(context),
  };
}

/** The pieces between hinges set free, equal and opposite forces on the two sides of each hinge. */
export function piecesFigure(context: MemberContext): FigureSpec {
  const pictures = partsOf(context.structure).map((part) => {
    const whole = memberPicture(context, {
      supports: [],
      loads: loadsOn(context, part),
      reactions: pictureReactions(context, part),
    });
    return {
      ...whole,
      start: part.from,
      end: part.to,
      points: whole.points.filter(({ x }) => x >= part.from && x <= part.to),
      hinges: [],
      dimensions: [],
    };
  });
  return { kind: 'free-body', pictures, alternate: describePieces(context) };
}

/** The loads on a part by their symbols, spread loads cut at its ends. */
function loadsOn(context: MemberContext, part: Part): readonly PictureLoad[] {
  const { structure } = context;
  const ids = new Set(
    structure.cases.flatMap((mark) =>
      termsOfSum(structure, mark, part, { kind: 'forces', along: 'y' }).flatMap(
        ({ source }) => (source.kind === 'load' ? [source.id] : []),
      ),
    ),
  );
  return structure.loads
    .filter(({ id }) => ids.has(id))
    .map((load) => pictureLoad(context, cutTo(load, part), 'symbol'));
}

function cutTo(load: Load, part: Part): Load {
  if (load.kind !== 'distributed') return load;
  const from = Math.max(load.from, part.from);
  const to = Math.min(load.to, part.to);
  const at = (x: number, first: number, second: number): number =>
    first + ((second - first) * (x - load.from)) / (load.to - load.from);
  return {
    ...load,
    from,
    to,
    x1: at(from, load.x1, load.x2),
    y1: at(from, load.y1, load.y2),
    x2: at(to, load.x1, load.x2),
    y2: at(to, load.y1, load.y2),
  };
}
