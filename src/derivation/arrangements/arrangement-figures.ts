import type { FigureSpec, PictureLoad } from '../../figure/index.ts';
import type { Arrangement, Load } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { memberPicture, pictureSupports } from '../pictures/member-picture.ts';
import { pictureLoad } from '../pictures/picture-loads.ts';
import { arrangementText } from './choice-names.ts';

/** The member with the loads that stand in one arrangement of a case; lengths were told before. */
export function arrangementFigure(
  context: MemberContext,
  mark: string,
  arrangement: Arrangement,
): FigureSpec {
  const picture = memberPicture(context, {
    supports: pictureSupports(context),
    loads: loadsStanding(context, mark, arrangement),
    reactions: [],
  });
  return {
    kind: 'member',
    picture: { ...picture, dimensions: [] },
    alternate: `An arrangement of case ${mark} that governs: ${arrangementText(context.choiceNames, arrangement)}.`,
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
