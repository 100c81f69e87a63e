import type {
  FigureSpec,
  PictureReaction,
  PictureSupport,
} from '../../figure/index.ts';
import type { ForceMethod, Release, Restraint } from '../../statics/index.ts';
import { loadsOfCase, type CaseContext } from '../case-context.ts';
import { degreesOf } from '../direction.ts';
import { symbolLabel } from './labels.ts';
import { memberPicture } from './member-picture.ts';
import { pictureLoad } from './picture-loads.ts';

/** The released member with what is left of its supports, the loads of the case, and the redundants as forces on it. */
export function releasedFigure(
  context: CaseContext,
  { released, releases }: Pick<ForceMethod, 'released' | 'releases'>,
): FigureSpec {
  const loads = loadsOfCase(context.structure, context.mark);
  const picture = memberPicture(context, {
    supports: released.supports.flatMap(({ x, restraints }) =>
      drawnSupport(x, restraints),
    ),
    loads: loads.map((load) => pictureLoad(context, load, 'symbol')),
    reactions: releases.map((release) => drawnRedundant(context, release)),
  });
  const places = releases.map(({ unknown }) => unknown.point);
  return {
    kind: 'member',
    picture,
    alternate: `The released member: what held it at ${[...new Set(places)].join(' and ')} is taken away and drawn as ${releases.length === 1 ? 'an unknown force or moment' : 'unknown forces and moments'} on it, beside ${loads.length} load${loads.length === 1 ? '' : 's'}.`,
  };
}

/** The symbol for a set of restraints; what holds x alone is a roller on an upright bed. */
function drawnSupport(
  x: number,
  restraints: readonly Restraint[],
): readonly PictureSupport[] {
  const forces = restraints.flatMap((r) => (r.kind === 'force' ? [r.direction] : []));
  const holds = {
    x: forces.some(([dx, dy]) => dx !== 0 && dy === 0),
    y: forces.some(([dx, dy]) => dx === 0 && dy !== 0),
    turning: restraints.some(({ kind }) => kind === 'moment'),
  };
  if (holds.turning) return [{ x, type: holds.y ? 'fixed' : 'guide' }];
  if (holds.x && holds.y) return [{ x, type: 'pin' }];
  const [direction] = forces;
  if (direction === undefined) return [];
  return holds.y
    ? [{ x, type: 'roller' }]
    : [{ x, type: 'roller', normal: degreesOf(direction) }];
}

function drawnRedundant(
  context: CaseContext,
  { unknown, x, restraint }: Release,
): PictureReaction {
  const label = symbolLabel(context.symbols.unknown(unknown));
  return restraint.kind === 'moment'
    ? { kind: 'moment', x, turn: 'counterclockwise', label }
    : { kind: 'force', x, degrees: degreesOf(restraint.direction), label };
}
