import type { Span } from '../../../diagnostics/index.ts';
import type { LoadFactor } from '../../definitions.ts';
import { present } from '../../shape/present.ts';
import type { Placed } from '../../shape/shape.ts';
import type { OfCase } from './cases.ts';
import { readFactors } from './factors.ts';
import { readUses, type LoadContext } from './load-context.ts';
import type { PerCase } from './load-line.ts';

/** What all loads that come from one line share, case by case. */
export interface LoadBase {
  readonly case: string;
  readonly uses: readonly string[];
  readonly span: Span;
  readonly note?: string;
  readonly factor?: LoadFactor;
}

/** What every load line may say beside its sizes. */
export interface LineParticulars {
  readonly note?: string;
  readonly uses?: readonly Placed<string>[];
  readonly times?: PerCase<number>;
  readonly because?: Placed<string>;
  readonly span: Span;
}

/** Pairs each sized case of a line with what its loads share. `lineSpan` is the place of the whole line. */
export function basesOf<T>(
  line: Omit<LineParticulars, 'span'>,
  sizes: readonly OfCase<T>[],
  lineSpan: Span,
  context: LoadContext,
): readonly { readonly base: LoadBase; readonly value: T }[] {
  const { premises, reading } = context;
  const uses = readUses(line.uses, premises, reading);
  const factorOf = readFactors(
    line,
    sizes.map((size) => size.case),
    reading,
  );
  return sizes.flatMap(({ case: mark, value }) => {
    if (value === undefined) return [];
    const { note } = line;
    const factor = factorOf(mark);
    const base = present<LoadBase>({ case: mark, uses, span: lineSpan, note, factor });
    return [{ base, value }];
  });
}
