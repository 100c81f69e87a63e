import { dimensions, parseQuantity } from '../units/index.ts';
import type { DeflectionLimit } from './definitions.ts';
import type { Premises } from './premises.ts';
import type { Reading } from './reading.ts';
import { readSum } from './read-sum.ts';
import type { LimitEntry } from './names.ts';
import type { Named } from './shape/map-of.ts';
import { listed } from './shape/listed.ts';

/** Deflection limits as read, and whether `cantilevers: plain` turns the doubled length of overhangs off. */
export interface ReadLimits {
  readonly limits: readonly DeflectionLimit[];
  readonly cantilevers: 'doubled' | 'plain' | undefined;
}

/** Checks `deflection_limits`: each key a case, a combination or a sum, each value `L/360` or a length. */
export function readLimits(
  entries: readonly Named<LimitEntry>[],
  premises: Pick<Premises, 'cases' | 'combinations'>,
  reading: Reading,
): ReadLimits {
  const cantilevers = entries.find((entry) => entry.name.value === 'cantilevers');
  const limits = entries
    .filter((entry) => entry !== cantilevers)
    .flatMap((entry) => {
      const known = isEntry(entry, premises, reading);
      return isLimit(entry, reading) && known && entry.value !== undefined
        ? [{ entry: entry.name.value, text: entry.value, span: entry.at }]
        : [];
    });
  return {
    limits,
    cantilevers:
      cantilevers === undefined ? undefined : readCantilevers(cantilevers, reading),
  };
}

function readCantilevers(
  entry: Named<LimitEntry>,
  reading: Reading,
): 'doubled' | 'plain' | undefined {
  if (entry.value === 'plain' || entry.value === 'doubled') return entry.value;
  reading.report({
    code: 'not-one-of',
    message: `\`${entry.value ?? ''}\` is none of doubled, plain`,
    span: entry.at,
    hints: ['write `plain` to take cantilevers with their own length'],
  });
  return undefined;
}

function isLimit(entry: Named<LimitEntry>, reading: Reading): boolean {
  if (entry.value === undefined) return false;
  const divisor = /^L\s*\/\s*(\d+(?:\.\d+)?)$/.exec(entry.value)?.[1];
  if (divisor !== undefined && Number(divisor) > 0) return true;
  const parsed = parseQuantity(entry.value, dimensions.length);
  if (parsed.quantity !== undefined && parsed.quantity.si > 0) return true;
  reading.report({
    code: 'not-a-limit',
    message: `\`${entry.value}\` is no deflection limit`,
    span: entry.at,
    hints: ['write a share of the span such as L/360, or a length'],
  });
  return false;
}

function isEntry(
  entry: Named<LimitEntry>,
  premises: Pick<Premises, 'cases' | 'combinations'>,
  reading: Reading,
): boolean {
  const { cases, combinations } = premises;
  if (cases === undefined || combinations.includes(entry.name.value)) return true;
  const terms = readSum(entry.name.value);
  const stranger = terms?.find((term) => !cases.some((one) => one.mark === term.case));
  if (terms !== undefined && stranger === undefined) return true;
  reading.report({
    code: 'unknown-entry',
    message:
      stranger === undefined
        ? `\`${entry.name.value}\` is no case, combination or sum of cases`
        : `no case \`${stranger.case}\` is known to the limit \`${entry.name.value}\``,
    span: entry.name.span,
    hints: [
      `write cases with a + between: D+L; cases here: ${listed(cases.map((one) => one.mark))}`,
    ],
  });
  return false;
}
