import type { InputChange } from '../comparison.ts';
import { diffField } from './diff-entries.ts';
import { fieldOf, type LoadItem } from './load-item.ts';
import { loadNames, wholeLoad } from './load-names.ts';
import { matchLoads, samePlaces } from './match-loads.ts';
import type { Place } from './places.ts';
import { isWhole } from './places.ts';

/** What differs between the loads of two states of a member of the later mark. */
export function diffLoads(
  earlier: readonly LoadItem[],
  later: readonly LoadItem[],
  member: { readonly mark: string; readonly length: number },
): readonly InputChange[] {
  const { pairs, removed, added } = matchLoads(earlier, later, member.length);
  const stand = { part: 'members', member: member.mark } as const;
  const whole = (item: LoadItem, kind: 'added' | 'removed'): InputChange => {
    const text = wholeLoad(item);
    const side = kind === 'added' ? 'to' : 'from';
    const what = loadNames(item, member.mark).full;
    return { kind, ...stand, what, ...(text === undefined ? {} : { [side]: text }) };
  };
  return [
    ...pairs.flatMap((pair) => diffLoad(pair.earlier, pair.later, member)),
    ...removed.map((item) => whole(item, 'removed')),
    ...added.map((item) => whole(item, 'added')),
  ];
}

/** What differs between two states of one load; what it is called leaves out what changed. */
function diffLoad(
  earlier: LoadItem,
  later: LoadItem,
  { mark, length }: { readonly mark: string; readonly length: number },
): readonly InputChange[] {
  const entry = { part: 'members', member: mark } as const;
  const names = loadNames(later, mark);
  const isThere = samePlaces(earlier.places, later.places, 1e-9 * length);
  const moved: InputChange = {
    kind: 'moved',
    ...entry,
    what: names.placeless,
    from: placeText(earlier.places),
    to: placeText(later.places),
  };
  const subject: InputChange = {
    kind: 'changed',
    ...entry,
    what: names.subject,
    from: earlier.subject,
    to: later.subject,
  };
  const traits = (of: 'traits' | 'about'): readonly InputChange[] =>
    later[of].flatMap((trait, place) =>
      diffField(
        fieldOf(earlier[of][place] ?? { word: trait.word }, names.full),
        fieldOf(trait, names.full),
        entry,
      ),
    );
  return [
    ...(earlier.subject === later.subject ? [] : [subject]),
    ...(isThere ? [] : [moved]),
    ...diffField(
      { what: names.value, value: earlier.value },
      { what: names.value, value: later.value },
      entry,
    ),
    ...traits('traits'),
    ...traits('about'),
  ];
}

function placeText(places: readonly Place[]): string {
  const [from, to] = places;
  if (from === undefined) return '';
  if (to === undefined) return from.words;
  return isWhole([from, to]) ? 'whole length' : `${from.words} to ${to.words}`;
}
