import type { GroupMark, Mark } from '../../drawing/index.ts';
import { formatNumbers } from '../format-number.ts';
import { overlap } from './box.ts';
import type { Owner } from './marked-content.ts';
import { own } from './own.ts';
import type { PagePen, Surroundings } from './page-pen.ts';

/** How the marks of a group are drawn: by the page's pen, each by its kind. */
export interface GroupTools {
  readonly pen: PagePen;
  readonly drawMark: (mark: Mark, around: Surroundings, pen: PagePen) => void;
}

/**
 * Draws the marks of a group. Moving costs no operator: coordinates are added up. Text that the
 * group stands for is written around its marks, in the upright space of the page, where readers
 * that honour it find its place.
 */
export function drawGroup(
  group: GroupMark,
  around: Surroundings,
  { pen, drawMark }: GroupTools,
): void {
  const x = around.x + group.x;
  const y = around.y + group.y;
  const owner = ownerOf(group) ?? around.owner;
  const clip = clipOf(group, { x, y, within: around.clip });
  const text = around.isSpoken || !isDrawn(group) ? undefined : group.actualText;
  const isSpoken = around.isSpoken || text !== undefined;
  if (text !== undefined || group.clip !== undefined) own({ owner, clip }, pen);
  if (text !== undefined) pen.owners.speak(text);
  if (group.clip !== undefined) beginClip(group.clip, { x, y }, pen);
  for (const mark of group.marks) drawMark(mark, { x, y, owner, isSpoken, clip }, pen);
  if (group.clip !== undefined) pen.content.restore();
  if (text !== undefined) pen.owners.endSpeaking();
}

/** True where a group puts ink on the page: a text stands for nothing otherwise. */
function isDrawn({ marks }: GroupMark): boolean {
  return marks.some((mark) => {
    if (mark.kind === 'group') return isDrawn(mark);
    return mark.kind !== 'anchor' && mark.kind !== 'link';
  });
}

function ownerOf({ element, artifact }: GroupMark): Owner | undefined {
  if (element !== undefined && artifact !== undefined)
    throw new RangeError(`A group is both of element ${element} and an artifact.`);
  if (element !== undefined) return { kind: 'element', element };
  return artifact === undefined ? undefined : { kind: 'artifact', artifact };
}

type Clip = NonNullable<GroupMark['clip']>;

function beginClip(clip: Clip, at: { x: number; y: number }, pen: PagePen): void {
  const left = at.x + clip.x;
  const foot = pen.height - (at.y + clip.y + clip.height);
  pen.content.save();
  pen.content.add(`${formatNumbers(left, foot, clip.width, clip.height)} re W n`);
}

/** What stays visible inside a group: its own clip and that of the groups around it. */
function clipOf(
  { clip }: GroupMark,
  {
    x,
    y,
    within,
  }: Pick<Surroundings, 'x' | 'y'> & { readonly within: Surroundings['clip'] },
): Surroundings['clip'] {
  if (clip === undefined) return within;
  const left = x + clip.x;
  const top = y + clip.y;
  const own = { left, top, right: left + clip.width, bottom: top + clip.height };
  if (within === undefined) return own;
  return overlap(own, within) ?? { left, top, right: left, bottom: top };
}
