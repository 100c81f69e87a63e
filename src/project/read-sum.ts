/** One term of a sum of cases. */
export interface SumTerm {
  readonly factor: number;
  readonly case: string;
}

const term = /^(\d+(?:\.\d+)?|\.\d+)?\s*\*?\s*([^\s+\-*\d.][^\s+\-*]*)$/u;

/**
 * Reads a sum of cases with factors, as deflection limits name it: `D+L`, `0.5D + L`, `0.42W`.
 * Undefined where the text is no such sum or names a case twice.
 */
export function readSum(written: string): readonly SumTerm[] | undefined {
  const read: SumTerm[] = [];
  for (const part of written.split('+')) {
    const found = term.exec(part.trim());
    const [, number, mark] = found ?? [];
    if (mark === undefined || read.some((one) => one.case === mark)) return undefined;
    read.push({ factor: number === undefined ? 1 : Number(number), case: mark });
  }
  return read;
}
