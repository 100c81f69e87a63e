import type { AreaLoad, CrossSection, LoadCase, Material } from './definitions.ts';

/**
 * What the checking of one member may lean on, gathered from the rest of the folder. What is
 * absent could not be read; the project then has an error of its own, and nothing in a member is
 * blamed for it.
 */
export interface Premises {
  readonly units: 'us' | 'si';
  /** The project's cases in order. */
  readonly cases?: readonly LoadCase[];
  /** Area loads by name. */
  readonly areas?: ReadonlyMap<string, AreaLoad>;
  /** Ids of assumptions and references. */
  readonly ids?: ReadonlySet<string>;
  /** Marks of the combinations, so that limits may be given for them. */
  readonly combinations: readonly string[];
  /** The project's own cross-sections by name; undefined for one that could not be read. */
  readonly sections: ReadonlyMap<string, CrossSection | undefined>;
  /** The project's own materials by name; undefined for one that could not be read. */
  readonly materials: ReadonlyMap<string, Material | undefined>;
}
