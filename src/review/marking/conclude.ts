import type { Dimension } from '../../units/index.ts';
import { linearForm, type Meanings } from '../reading/linear-form.ts';
import { readLine } from '../reading/read-line.ts';
import type { DirectionWord, Written } from '../reading/written.ts';

/** A conclusion as written: for which symbols, how much. */
export interface WrittenConclusion {
  /** As written. */
  readonly text: string;
  /** The symbols that are said to be worth it, with the sign in front of them. */
  readonly symbols: readonly { readonly name: string; readonly sign: 1 | -1 }[];
  /** SI. */
  readonly value: number;
  readonly dimension: Dimension | undefined;
  readonly direction?: DirectionWord;
  /** Significant figures that the number was written with; absent where it is worked out. */
  readonly figures?: number;
}

/** A conclusion read, or why it cannot be. */
export type ReadConclusion =
  | { readonly conclusion: WrittenConclusion; readonly fault?: undefined }
  | {
      readonly fault: {
        readonly kind: 'syntax' | 'symbol' | 'unit';
        readonly message: string;
      };
      readonly conclusion?: undefined;
    };

/** Reads `RC = 2.40 kip`, `RA = RC = 9 kip`, `M = 36 kip ft sagging`, or a value alone. */
export function readConclusion(
  text: string,
  names: readonly string[],
  meanings: Meanings,
): ReadConclusion {
  const read = readLine(text, names);
  if (read.fault !== undefined) return { fault: read.fault };
  let fault: ReadConclusion['fault'];
  for (const { links, direction } of read.readings) {
    const last = links.at(-1);
    if (last === undefined) continue;
    const worked = linearForm(last, meanings);
    if (worked.fault !== undefined) {
      fault ??= worked.fault;
      continue;
    }
    if (worked.form.unknowns.size > 0) {
      fault ??= {
        kind: 'syntax',
        message: 'a conclusion ends in a number with its unit',
      };
      continue;
    }
    const { constant, dimension } = worked.form;
    const figures = figuresOf(last);
    return {
      conclusion: {
        text,
        symbols: links.slice(0, -1).flatMap((link) => symbolOf(link) ?? []),
        value: constant,
        dimension,
        ...(direction === undefined ? {} : { direction }),
        ...(figures === undefined ? {} : { figures }),
      },
    };
  }
  return { fault: fault ?? { kind: 'syntax', message: 'nothing is concluded here' } };
}

function symbolOf(
  of: Written,
): { readonly name: string; readonly sign: 1 | -1 } | undefined {
  if (of.kind === 'name') return { name: of.name, sign: 1 };
  const [only, ...others] = of.kind === 'sum' ? of.terms : [];
  return only?.of.kind === 'name' && others.length === 0
    ? { name: only.of.name, sign: only.sign }
    : undefined;
}

/** How many significant figures a written number has; trailing zeros without a point count as none. */
function figuresOf(of: Written): number | undefined {
  const number = of.kind === 'sum' && of.terms.length === 1 ? of.terms[0]?.of : of;
  if (number?.kind !== 'number') return undefined;
  const digits = number.quantity.text
    .replace(/[eE].*$/u, '')
    .replace(/[^\d.]/gu, '')
    .replace(/^0*\.?0*/u, '');
  const isWhole = !number.quantity.text.includes('.');
  return (isWhole ? digits.replace(/0+$/u, '') : digits.replace('.', '')).length || 1;
}
