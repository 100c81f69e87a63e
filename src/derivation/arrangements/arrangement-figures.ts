import type { BeamPicture, FigureSpec, PictureLoad } from '../../figure/index.ts';
import type { Arrangement, Load, RangeResult } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { memberPicture, pictureSupports } from '../pictures/member-picture.ts';
import { pictureLoad } from '../pictures/picture-loads.ts';
import { arrangementText } from './choice-names.ts';

/** An arrangement that is drawn, and what it gives, in words. */
export interface DrawnArrangement {
  readonly arrangement: Arrangement;
  readonly gives: string;
}

/** The member once for each arrangement, one under the other, with the loads that stand in it. */
export function arrangementsFigure(
  context: MemberContext,
  range: RangeResult,
  drawn: readonly DrawnArrangement[],
): FigureSpec {
  const pictures = drawn.map(({ arrangement }, index): BeamPicture => {
    const picture = memberPicture(context, {
      supports: pictureSupports(context),
      loads: loadsStanding(context, range.mark, arrangement),
      reactions: [],
    });
    // Lengths are told once, under the last.
    return index < drawn.length - 1 ? { ...picture, dimensions: [] } : picture;
  });
  const each = drawn.map(
    ({ arrangement, gives }) =>
      `${gives}: ${arrangementText(context.choiceNames, arrangement)}`,
  );
  return {
    kind: 'free-body',
    pictures,
    alternate: `Arrangements of case ${range.mark} that govern, one under the other. ${each.join('. ')}.`,
  };
}

function loadsStanding(
  context: MemberContext,
  mark: string,
  { choices }: Arrangement,
): readonly PictureLoad[] {
  const { arranged } = context;
  const fixed = arranged.loads.filter((load) => load.case === mark);
  const chosen = choices.flatMap(({ id, option }) => {
    const choice = (arranged.choices ?? []).find((one) => one.id === id);
    return choice?.options.find(({ name }) => name === option)?.loads ?? [];
  });
  return [...fixed, ...chosen].flatMap((load) => {
    const symbol = asPlaced(context, load);
    return symbol === undefined
      ? []
      : [pictureLoad(context, { ...load, id: symbol }, 'symbol')];
  });
}

/** The load of the sheet that a part of it, or one end of a carried one, bears the id of. */
function asPlaced({ structure }: MemberContext, { id }: Load): string | undefined {
  const whole = structure.loads.filter(
    (load) => load.id === id || id.startsWith(`${load.id}:`),
  );
  // Of ids that begin alike the longest is meant.
  return whole.toSorted((a, b) => b.id.length - a.id.length)[0]?.id;
}
