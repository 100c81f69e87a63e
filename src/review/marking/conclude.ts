import type { Dimension } from '../../units/index.ts';
import {
  linearForm,
  type Meanings,
  type WorkingFault,
} from '../reading/linear-form.ts';
import { readLine } from '../reading/read-line.ts';
import type {
  DirectionWord,
  Extent,
  Written,
  WrittenLine,
} from '../reading/written.ts';

/** A conclusion as written: for which symbols, how much. */
export interface WrittenConclusion {
  /** As written. */
  readonly text: string;
  /** The symbols that are said to be worth it, with the sign in front of them. */
  readonly symbols: readonly { readonly name: string; readonly sign: 1 | -1 }[];
  /** What stands between its symbols and its value (`RC = 50.4 kip ft / 21 ft = 2.40 kip`), with what it comes to, SI. */
  readonly between: readonly {
    readonly text: string;
    readonly value: number;
    readonly dimension: Dimension | undefined;
  }[];
  /** SI. */
  readonly value: number;
  readonly dimension: Dimension | undefined;
  readonly direction?: DirectionWord;
  /** One of the unit that it was written in, SI: rounding is judged in that unit. */
  readonly unit: number;
  /** True where a number other than 0 stands without a unit. */
  readonly isBare: boolean;
}

/** A conclusion read, or why it cannot be. */
export type ReadConclusion =
  | { readonly conclusion: WrittenConclusion; readonly fault?: undefined }
  | {
      readonly fault: WorkingFault;
      readonly conclusion?: undefined;
    };

/**
 * Reads `RC = 2.40 kip`, `RA = RC = 9 kip`, `M = 36 kip ft sagging`, or a value alone. `meanings`
 * are the worker's own, with a number for whatever was concluded before.
 */
export function readConclusion(
  text: string,
  names: readonly string[],
  meanings: Meanings,
): ReadConclusion {
  const read = readLine(text, names);
  if (read.fault !== undefined) return { fault: read.fault };
  let fault: ReadConclusion['fault'];
  for (const line of read.readings) {
    const found = concludedIn(line, meanings);
    if (found.conclusion !== undefined) return found;
    fault ??= found.fault;
  }
  return {
    fault: fault ?? {
      kind: 'syntax',
      message: 'nothing is concluded here',
      start: 0,
      end: text.length,
    },
  };
}

function concludedIn(
  { text, links, direction }: WrittenLine,
  meanings: Meanings,
): ReadConclusion {
  const worked = links.map((link) => linearForm(link, meanings));
  const last = links.at(-1);
  const { form, fault } = worked.at(-1) ?? {};
  if (fault !== undefined) return { fault };
  if (last === undefined || form === undefined || form.unknowns.size > 0)
    return { fault: noNumber(last ?? { start: 0, end: text.length }) };
  const expressions = links
    .slice(0, -1)
    .flatMap((link, index) =>
      symbolOf(link) === undefined ? [{ link, own: worked[index] }] : [],
    );
  const unclear = expressions.find(({ own }) => own?.fault !== undefined)?.own?.fault;
  if (unclear !== undefined) return { fault: unclear };
  const between = expressions.flatMap(({ link, own }) => {
    const shown = text.slice(link.start, link.end).trim();
    return own?.form?.unknowns.size === 0
      ? [{ text: shown, value: own.form.constant, dimension: own.form.dimension }]
      : [];
  });
  return {
    conclusion: {
      text,
      symbols: links.slice(0, -1).flatMap((link) => symbolOf(link) ?? []),
      between,
      value: form.constant,
      dimension: form.dimension,
      ...(direction === undefined ? {} : { direction }),
      ...unitOf(last),
    },
  };
}

function noNumber({ start, end }: Extent): WorkingFault {
  const message = 'a conclusion ends in a number with its unit';
  return { kind: 'syntax', message, start, end };
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

/** The unit that a conclusion ends in, and whether it has none. */
function unitOf(of: Written): Pick<WrittenConclusion, 'unit' | 'isBare'> {
  const number = numberIn(of);
  const isBare = number?.isBare === true && number.quantity.si !== 0;
  return { unit: number?.quantity.unit.inSi ?? 1, isBare };
}

/** The number that an expression is, whatever its sign; undefined for one that is worked out. */
function numberIn(of: Written): Extract<Written, { kind: 'number' }> | undefined {
  const [only, ...others] = of.kind === 'sum' ? of.terms : [];
  const number = only !== undefined && others.length === 0 ? only.of : of;
  return number.kind === 'number' ? number : undefined;
}
