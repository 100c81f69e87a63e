import type { PdfObject } from './pdf-object.ts';
import { entriesOf, nameOf, numberOf, textOf } from './pdf-object.ts';

/** What a piece of content belongs to, from the marked sequences around it. */
export interface Marking {
  /** The tag and number of each sequence of the structure around it, outermost first. */
  readonly content: readonly { readonly tag: string; readonly mcid: number }[];
  /** How many artifacts it stands in. */
  readonly artifacts: number;
  /** The text that stands for it; undefined where none does. */
  readonly actualText: string | undefined;
}

/** Follows the marked content of a page (ISO 32000-1, 14.6). */
export interface MarkedStack {
  readonly follow: (operator: string, operands: readonly PdfObject[]) => void;
  readonly now: () => Marking;
  readonly faults: () => readonly string[];
}

interface Sequence {
  readonly tag: string;
  readonly mcid: number | undefined;
  readonly actualText: string | undefined;
}

/** A page on which no sequence is open. */
export function openMarks(): MarkedStack {
  const open: Sequence[] = [];
  const faults: string[] = [];
  const now = (): Marking => ({
    content: open.flatMap(({ tag, mcid }) =>
      mcid === undefined ? [] : [{ tag, mcid }],
    ),
    artifacts: open.filter(({ tag }) => tag === 'Artifact').length,
    actualText: open.find(({ actualText }) => actualText !== undefined)?.actualText,
  });
  return {
    now,
    follow: (operator, operands) => {
      if (operator === 'EMC' && open.pop() === undefined)
        faults.push('a marked sequence ends that never began');
      if (operator !== 'BDC' && operator !== 'BMC') return;
      const tag = nameOf(operands[0] ?? null) ?? '';
      const properties = entriesOf(operands[1] ?? null);
      open.push({
        tag,
        mcid: numberOf(properties.get('MCID') ?? null),
        actualText: textOf(properties.get('ActualText') ?? null),
      });
      const { content, artifacts } = now();
      if (content.length + artifacts > 1)
        faults.push(`a marked sequence ${tag} begins inside another`);
    },
    faults: () =>
      open.length === 0
        ? faults
        : [...faults, `${open.length} marked sequences never end`],
  };
}
