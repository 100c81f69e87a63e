import type { AreaLoad, CrossSection, LoadCase, Material } from './definitions.ts';

/** What the checking of one member may lean on, gathered from the rest of the folder. */
export interface Premises {
  readonly units: 'us' | 'si';
  /** The project's cases in order; absent where they could not be read, so that no load is blamed for that. */
  readonly cases?: readonly LoadCase[];
  /** Area loads by name; absent where they could not be read. */
  readonly areas?: ReadonlyMap<string, AreaLoad>;
  /** Ids of assumptions and references; absent where they could not be read. */
  readonly ids?: readonly string[];
  /** Marks of the combinations, so that limits may be given for them. */
  readonly combinations: readonly string[];
  readonly sections: ReadonlyMap<string, CrossSection>;
  readonly materials: ReadonlyMap<string, Material>;
}
