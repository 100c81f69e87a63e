import type { LoadItem, LoadNames } from './load-item.ts';
import { whereabouts } from './places.ts';
import { numberText, valueText } from './value.ts';

/** What a load of a member is called, by that member's later mark. */
export function loadNames(item: LoadItem, mark: string): LoadNames {
  const where = whereabouts(item.places);
  const at = where === '' ? '' : ` ${where}`;
  const on = item.kind === 'carried' ? `carried by ${mark}` : `on ${mark}`;
  const noun = nouns[item.kind];
  const name = `${noun} ${item.subject}`;
  const full = `${name} ${on}${at}`;
  return {
    full,
    placeless: `${name}${ofSize(item)} ${on}`,
    nameless: `${noun} ${on}${at}`,
    value: `${valueWords[item.kind]}${full}`,
    subject: `${subjectWords[item.kind]} the ${noun} ${on}${at}`,
  };
}

/** A load in words where all of it came or went: `8.4 kip`, `0.6 kN/m, up`. */
export function wholeLoad(item: LoadItem): string | undefined {
  const size = item.kind === 'carried' && isOnce(item) ? undefined : sizeWord(item);
  const shown = item.traits.flatMap(({ word, value }) =>
    word === 'direction of' && value !== undefined && valueText(value) !== 'down'
      ? [valueText(value)]
      : word === 'turn of' && value !== undefined
        ? [valueText(value)]
        : [],
  );
  const all = [...(size === undefined ? [] : [size]), ...shown];
  return all.length === 0 ? undefined : all.join(', ');
}

function ofSize(item: LoadItem): string {
  return item.kind === 'carried' ? '' : ` of ${sizeWord(item)}`;
}

function sizeWord({ kind, value }: LoadItem): string {
  const size = valueText(value);
  if (kind === 'area') return `width ${size}`;
  return kind === 'carried' && value.kind === 'number'
    ? `${numberText(value.value)} times`
    : size;
}

const isOnce = ({ value }: LoadItem): boolean =>
  value.kind === 'number' && value.value === 1;

const nouns: Readonly<Record<LoadItem['kind'], string>> = {
  point: 'load',
  distributed: 'load',
  couple: 'couple',
  area: 'area load',
  temperature: 'temperature',
  axles: 'axles',
  carried: 'reaction',
};

const valueWords: Readonly<Record<LoadItem['kind'], string>> = {
  point: '',
  distributed: '',
  couple: '',
  area: 'width of ',
  temperature: 'difference of ',
  axles: '',
  carried: 'factor on ',
};

const subjectWords: Readonly<Record<LoadItem['kind'], string>> = {
  point: 'case of',
  distributed: 'case of',
  couple: 'case of',
  area: 'name of',
  temperature: 'case of',
  axles: 'case of',
  carried: 'source of',
};
