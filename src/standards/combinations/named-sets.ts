import { asce7Allowable } from './asce7-allowable.ts';
import { asce7Strength } from './asce7-strength.ts';
import { en1990Sls } from './en1990-sls.ts';
import { en1990Uls } from './en1990-uls.ts';
import type { NamedSet, NamedSetName } from './named-set.ts';

/** Every named set, one file each. */
export const namedSets: Readonly<Record<NamedSetName, NamedSet>> = {
  'asce7-strength': asce7Strength,
  'asce7-allowable': asce7Allowable,
  'en1990-uls': en1990Uls,
  'en1990-sls': en1990Sls,
};

/** Names of the sets, in the order in which a hint lists them. */
export const namedSetNames: readonly NamedSetName[] = Object.values(namedSets).map(
  (set) => set.name,
);
