import type { Verified } from './lane.ts';
import type { Shard } from './shard.ts';
import { verdictOn } from './verification-lines.ts';

/** In the order in which a sum names them. */
const verdicts = [
  'intact',
  'differs',
  'not recomputed',
  'damaged',
  'unreadable',
  'failed',
] as const;

/** How many bags there are of each verdict. */
export type VerificationSum = Readonly<Record<(typeof verdicts)[number], number>>;

/** Nothing counted yet. */
export const noneVerified: VerificationSum = {
  intact: 0,
  differs: 0,
  'not recomputed': 0,
  damaged: 0,
  unreadable: 0,
  failed: 0,
};

/** The sum with one more. */
export function withVerified(
  sum: VerificationSum,
  verified: Verified,
): VerificationSum {
  const verdict = verdictOn(verified);
  return { ...sum, [verdict]: sum[verdict] + 1 };
}

/** The last line: how many of each, and of which share. `all` counts what was found before the share was cut. */
export function sumLine(
  sum: VerificationSum,
  all: number,
  shard: Shard | undefined,
): string {
  const count = verdicts.reduce((total, verdict) => total + sum[verdict], 0);
  const share =
    shard === undefined
      ? `${count} verified`
      : `shard ${shard.number} of ${shard.count}, ${count} of ${all} verified`;
  const parts = verdicts
    .filter((verdict) => sum[verdict] > 0)
    .map((verdict) => `${sum[verdict]} ${verdict}`);
  return `${[share, parts.join(', ')].filter((part) => part !== '').join(': ')}\n`;
}
