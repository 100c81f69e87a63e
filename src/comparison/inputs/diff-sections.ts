import type { InputChange } from '../comparison.ts';
import { diffEntries, diffEntry } from './diff-entries.ts';
import type { Entry } from './entry.ts';
import { placeOn, samePlace, type Axis, type Place } from './places.ts';
import { sectionOf } from './property-entries.ts';

/** What differs between the cross-sections of two states of a member, stretch by stretch from left to right. */
export function diffSections(
  earlier: Axis,
  later: Axis,
  mark: string,
): readonly InputChange[] {
  const [before, after] = [stretchesOf(earlier, mark), stretchesOf(later, mark)];
  if (before.length !== after.length)
    return diffEntries(wholeEntry(before, mark), wholeEntry(after, mark));
  return after.flatMap((stretch, place) => {
    const other = before[place];
    if (other === undefined) return [];
    return [
      ...(place === 0 ? [] : borderChange(other.from, stretch.from, later, mark)),
      ...diffEntry(other.entry, stretch.entry),
    ];
  });
}

interface Stretch {
  readonly from: Place;
  readonly to: Place;
  readonly entry: Entry;
}

function stretchesOf(axis: Axis, mark: string): readonly Stretch[] {
  const { sections } = axis.beam;
  return sections.map(({ from, to, section }) => {
    const [start, end] = [placeOn(axis, from), placeOn(axis, to)];
    const part = sections.length === 1 ? '' : ` from ${start.words} to ${end.words}`;
    const told = sectionOf(section, `section of ${mark}${part}`, axis.names);
    return {
      from: start,
      to: end,
      entry: { part: 'members', member: mark, key: 'section', ...told },
    };
  });
}

function borderChange(
  earlier: Place,
  later: Place,
  { tolerance }: Axis,
  mark: string,
): readonly InputChange[] {
  if (samePlace(earlier, later, tolerance)) return [];
  return [
    {
      kind: 'moved',
      part: 'members',
      member: mark,
      what: `change of section of ${mark}`,
      from: earlier.words,
      to: later.words,
    },
  ];
}

/** All stretches as one, where their number differs. */
function wholeEntry(stretches: readonly Stretch[], mark: string): readonly Entry[] {
  if (stretches.length === 0) return [];
  const isOne = stretches.length === 1;
  const whole = stretches
    .map(({ from, to, entry }) =>
      isOne
        ? (entry.whole ?? '')
        : `${entry.whole ?? ''} from ${from.words} to ${to.words}`,
    )
    .join(', ');
  return [
    {
      part: 'members',
      member: mark,
      key: 'sections',
      what: isOne ? `section of ${mark}` : `sections of ${mark}`,
      sort: whole,
      whole,
      fields: [],
    },
  ];
}
