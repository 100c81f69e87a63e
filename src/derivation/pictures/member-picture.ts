import type {
  BeamPicture,
  PictureLoad,
  PictureReaction,
  PictureSupport,
} from '../../figure/index.ts';
import type { BeamSupport } from '../../project/index.ts';
import { termsOfSum, type Part, type Restraint } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { degreesOf } from '../direction.ts';
import { dimensionText } from '../printing.ts';
import { reactionSymbol } from '../symbols.ts';
import { symbolLabel, textLabel } from './labels.ts';

/** What stands on a picture of the member besides the member itself. */
export interface PictureParts {
  readonly supports: readonly PictureSupport[];
  readonly loads: readonly PictureLoad[];
  readonly reactions: readonly PictureReaction[];
}

/** The whole member with its points, hinges and dimension chains, and the parts that are to stand on it. */
export function memberPicture(
  { structure, printing, definition }: MemberContext,
  parts: PictureParts,
): BeamPicture {
  const { points } = structure;
  const between = points.slice(1).map((point, index) => {
    const from = points[index]?.x ?? 0;
    return {
      from,
      to: point.x,
      label: textLabel(dimensionText(printing, point.x - from)),
    };
  });
  const start = points[0]?.x ?? 0;
  const end = points.at(-1)?.x ?? 0;
  const overall = [
    { from: start, to: end, label: textLabel(dimensionText(printing, end - start)) },
  ];
  return {
    start,
    end,
    points,
    supports: parts.supports,
    hinges: definition.hinges.map(({ x }) => ({ x })),
    loads: parts.loads,
    reactions: parts.reactions,
    dimensions: between.length > 1 ? [between, overall] : [overall],
  };
}

/** The supports as symbols. */
export function pictureSupports({
  structure,
  definition,
}: MemberContext): readonly PictureSupport[] {
  return definition.supports.map((support) => ({
    x: structure.points.find(({ name }) => name === support.point)?.x ?? 0,
    type: drawnAs(support),
    ...(support.normal === undefined
      ? {}
      : { normal: (support.normal.si * 180) / Math.PI }),
  }));
}

function drawnAs({ type, rotation }: BeamSupport): PictureSupport['type'] {
  return type === 'pin' && rotation !== undefined ? 'pin-with-rotation-spring' : type;
}

/** The reactions on a part in their positive sense, and the forces at the hinges that end it. */
export function pictureReactions(
  context: MemberContext,
  part: Part,
): readonly PictureReaction[] {
  const { structure, symbols } = context;
  const first = structure.cases[0] ?? '';
  const terms = termsOfSum(structure, first, part, { kind: 'forces', along: 'y' });
  return terms.flatMap(({ source, x }): readonly PictureReaction[] => {
    if (source.kind === 'load') return [];
    if (source.kind === 'reaction') {
      const restraint = structure.supports.find(({ point }) => point === source.point)
        ?.restraints[source.index];
      return restraint === undefined ? [] : [drawnReaction(source.point, x, restraint)];
    }
    const unknown = {
      kind: 'hinge',
      point: source.point,
      component: source.component,
    } as const;
    const axis = source.component === 'x' ? 0 : 90;
    // Drawn in its positive sense on the piece to the right of the hinge, turned round on the left one.
    const degrees = source.side === 'left' ? axis + 180 : axis;
    return [
      { kind: 'force', x, degrees, label: symbolLabel(symbols.unknown(unknown)) },
    ];
  });
}

function drawnReaction(
  point: string,
  x: number,
  restraint: Restraint,
): PictureReaction {
  const label = symbolLabel(reactionSymbol(point, restraint));
  if (restraint.kind === 'moment')
    return { kind: 'moment', x, turn: 'counterclockwise', label };
  return { kind: 'force', x, degrees: degreesOf(restraint.direction), label };
}
