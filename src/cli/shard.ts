import { digest } from '../world/index.ts';
import type { Given } from './read-arguments.ts';
import type { UsageFault } from './usage-fault.ts';

/** One share of a long list, so that several machines can each take one. */
export interface Shard {
  /** From 1 to `count`. */
  readonly number: number;
  readonly count: number;
}

/** More shares than this no scheduler is asked for. */
const mostShards = 10_000;

/** The share that `--shard 3/16` asks for, nothing where it is not given, or what is wrong with it. */
export function shardIn(
  given: Given,
): { readonly shard?: Shard } | { readonly fault: UsageFault } {
  const text = given.value('shard');
  if (text === undefined) return {};
  const [, number, count] = /^(\d{1,5})\/(\d{1,5})$/u.exec(text)?.map(Number) ?? [];
  const isShare =
    number !== undefined &&
    count !== undefined &&
    number >= 1 &&
    number <= count &&
    count <= mostShards;
  return isShare
    ? { shard: { number, count } }
    : {
        fault: {
          message: `--shard takes a share such as 3/16, the number of shares at most ${mostShards}, not ${text}`,
          hints: ['write --shard 1/4 on one machine, 2/4 on the next, and so on'],
        },
      };
}

/**
 * Whether a name falls to a share. A digest of the name decides, not its place in a list: the same name
 * falls to the same share on every machine, also when others are added meanwhile, and to no second.
 */
export function isInShard(name: string, shard: Shard | undefined): boolean {
  if (shard === undefined) return true;
  const drawn = Number.parseInt(
    digest(new TextEncoder().encode(name)).slice(0, 12),
    16,
  );
  return drawn % shard.count === shard.number - 1;
}
