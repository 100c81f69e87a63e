import type { World } from '../world/index.ts';
import { isInShard, type Shard } from './shard.ts';
import type { UsageFault } from './usage-fault.ts';

/** What is to be verified. */
export interface Subjects {
  /** Paths of the share, in order, each once. */
  readonly paths: readonly string[];
  /** How many there are over all shares. */
  readonly found: number;
}

/** The files that a command line names, folders searched for bags, cut to a share; or what is wrong. */
export async function subjectsIn(
  world: World,
  named: readonly string[],
  shard: Shard | undefined,
): Promise<Subjects | { readonly fault: UsageFault }> {
  if (named.length === 0)
    return {
      fault: {
        message: 'verify needs a bag, a bound PDF or a folder of bags',
        hints: ['write sumzero verify BAG'],
      },
    };
  const { bagsBelow } = await import('../index.ts');
  // By path; what decides the share is the path from the folder that was named.
  const found = new Map<string, string>();
  for (const path of named) {
    if (world.list(path) === undefined) found.set(path, path);
    else {
      const { bags, unsearched } = bagsBelow(world, path);
      const fault = faultOf(path, bags, unsearched);
      if (fault !== undefined) return { fault };
      const start = path.endsWith('/') ? path : `${path}/`;
      for (const bag of bags) found.set(`${start}${bag}`, bag);
    }
  }
  const paths = [...found]
    .filter(([, name]) => isInShard(name, shard))
    .map(([path]) => path);
  return { paths, found: found.size };
}

function faultOf(
  folder: string,
  bags: readonly string[],
  unsearched: readonly string[],
): UsageFault | undefined {
  const [deep] = unsearched;
  if (deep !== undefined)
    return {
      message: `${deep} lies too deep below ${folder} to be searched`,
      hints: ['look for a link that leads back, or name a folder farther down'],
    };
  return bags.length > 0
    ? undefined
    : {
        message: `there is no bag (.zip) in or below ${folder}`,
        hints: ['name a bag that sumzero archive made, or a folder of such'],
      };
}
