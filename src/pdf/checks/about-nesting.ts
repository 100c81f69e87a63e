import type { ReadElement } from '../reading/read-structure.ts';
import type { Check } from './opened-pdf.ts';

interface Rule {
  /** Types that may stand directly in it; absent: any. */
  readonly holds?: readonly string[];
  /** Types that it may stand directly in; absent: any. */
  readonly within?: readonly string[];
}

const rowGroups = ['Table', 'THead', 'TBody', 'TFoot'];

/** What may stand in what (ISO 32000-1, 14.8.4.3; PDF/UA-1, 7.2). */
const rules: ReadonlyMap<string, Rule> = new Map<string, Rule>([
  ['Table', { holds: ['TR', 'THead', 'TBody', 'TFoot', 'Caption'] }],
  ['THead', { holds: ['TR'], within: ['Table'] }],
  ['TBody', { holds: ['TR'], within: ['Table'] }],
  ['TFoot', { holds: ['TR'], within: ['Table'] }],
  ['TR', { holds: ['TH', 'TD'], within: rowGroups }],
  ['TH', { within: ['TR'] }],
  ['TD', { within: ['TR'] }],
  ['L', { holds: ['L', 'LI', 'Caption'] }],
  ['LI', { holds: ['Lbl', 'LBody'], within: ['L'] }],
  ['LBody', { within: ['LI'] }],
]);

const standardTypes: ReadonlySet<string> = new Set(
  'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Figure Formula'.split(
    ' ',
  ),
);

/** Nesting of elements, and what each type must bring with it. */
export const aboutNesting: Check = {
  about: 'nesting',
  find: ({ roots, elements }) => [
    ...roots.flatMap(nestingFindings),
    ...elements.flatMap(elementFindings),
    ...noteFindings(elements),
  ],
};

function nestingFindings(element: ReadElement): readonly string[] {
  const { holds } = rules.get(element.type) ?? {};
  return element.kids.flatMap((kid) => {
    if (kid.kind !== 'element') return [];
    const { type } = kid.element;
    const { within } = rules.get(type) ?? {};
    const isAllowed =
      (holds?.includes(type) ?? true) && (within?.includes(element.type) ?? true);
    const wrong = `a ${type} stands in a ${element.type}`;
    return [...(isAllowed ? [] : [wrong]), ...nestingFindings(kid.element)];
  });
}

function elementFindings({
  type,
  number,
  alternate,
  actualText,
}: ReadElement): readonly string[] {
  const isSpoken = (alternate ?? actualText ?? '').trim() !== '';
  const mustSpeak = type === 'Figure' || type === 'Formula';
  return [
    ...(standardTypes.has(type) ? [] : [`${type} is no standard type`]),
    ...(mustSpeak && !isSpoken ? [`${type} ${number} has no alternate text`] : []),
  ];
}

/** Notes are told apart by identifiers (PDF/UA-1, 7.9). */
function noteFindings(elements: readonly ReadElement[]): readonly string[] {
  const notes = elements.filter(({ type }) => type === 'Note');
  const identifiers = new Set(
    notes.flatMap(({ id }) => (id === undefined ? [] : [id])),
  );
  return identifiers.size === notes.length
    ? []
    : ['two notes have no identifiers of their own'];
}
