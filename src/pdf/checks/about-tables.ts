import { nameOf, numberOr } from '../reading/pdf-object.ts';
import { elementsWithin } from '../reading/read-structure.ts';
import type { ReadElement } from '../reading/read-structure.ts';
import type { Check } from './opened-pdf.ts';

/** Tables: header cells say what they head, and rows have equally many columns (PDF/UA-1, 7.2 and 7.5). */
export const aboutTables: Check = {
  about: 'tables',
  find: ({ elements }) =>
    elements.filter(({ type }) => type === 'Table').flatMap(tableFindings),
};

function tableFindings(table: ReadElement): readonly string[] {
  const parts = elementsWithin(table);
  const rows = parts.filter(({ type }) => type === 'TR');
  const widths = new Set(rows.map(columnsOf));
  const count = (type: string): number =>
    parts.filter((part) => part.type === type).length;
  const name = `table ${table.number}`;
  return [
    ...(rows.length === 0 ? [`${name} has no rows`] : []),
    ...(widths.size > 1
      ? [`${name} has rows of ${[...widths].join(' and ')} columns`]
      : []),
    ...(count('THead') > 1 ? [`${name} has two heads`] : []),
    ...(count('THead') > 0 && count('TBody') === 0
      ? [`${name} has a head and no body`]
      : []),
    ...parts
      .filter(({ type, attributes }) => type === 'TH' && !hasScope(attributes))
      .map(({ number }) => `header cell ${number} does not say what it heads`),
    ...(count('TH') === 0 && rows.length > 0 ? [`${name} has no header cells`] : []),
  ];
}

function columnsOf({ kids }: ReadElement): number {
  return kids.reduce(
    (sum, kid) =>
      kid.kind === 'element'
        ? sum + numberOr(kid.element.attributes.get('ColSpan'), 1)
        : sum,
    0,
  );
}

function hasScope(attributes: ReadElement['attributes']): boolean {
  return ['Column', 'Row', 'Both'].includes(
    nameOf(attributes.get('Scope') ?? null) ?? '',
  );
}
