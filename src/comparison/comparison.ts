/** Which package: one side of a comparison. */
export interface ComparedPackage {
  readonly number: string | null;
  readonly title: string;
  /** Mark of its latest revision; null where it has none. */
  readonly revision: string | null;
}

/** Where in a project an input stands. */
export type InputPart =
  | 'identity'
  | 'people'
  | 'revisions'
  | 'conventions'
  | 'criteria'
  | 'assumptions'
  | 'references'
  | 'cautions'
  | 'methods'
  | 'cases'
  | 'areas'
  | 'combinations'
  | 'sections'
  | 'materials'
  | 'members'
  | 'worked'
  | 'pictures'
  | 'templates'
  | 'theme';

/** One change of an input, by meaning. */
export interface InputChange {
  readonly kind: 'added' | 'removed' | 'changed' | 'moved' | 'renamed';
  readonly part: InputPart;
  /** Mark of the member that it stands on, by its later name where it has one. */
  readonly member?: string;
  /** What it is, a phrase that stands alone: `load L on B1 at B`, `point C of B1`, `combination 1.2D + 1.6L`. */
  readonly what: string;
  /** What it was, as a person would write it, with its unit; absent for what was added. */
  readonly from?: string;
  /** What it is now; absent for what was removed. */
  readonly to?: string;
}

/** A number of results.json with its unit, and where it comes from. */
export interface ComparedFigure {
  readonly value: number;
  readonly unit: string;
  /** Mark of the case or combination that it is from. */
  readonly entry?: string;
  /** Station, with its unit. */
  readonly at?: { readonly value: number; readonly unit: string };
}

/** How a governing value of a member changed. */
export interface ResultChange {
  readonly member: string;
  /** `greatest moment`, `least moment`, `greatest shear`, `reaction y at C`: a phrase. */
  readonly what: string;
  readonly before?: ComparedFigure;
  readonly after?: ComparedFigure;
  /** (after − before)/before, in one unit: positive where the size grows, whatever its sign; absent where either is missing or before is 0. */
  readonly share?: number;
}

/** How a check against a limit changed. */
export interface CheckChange {
  readonly kind:
    'newly failing' | 'still failing' | 'mended' | 'changed' | 'added' | 'removed';
  readonly member: string;
  /** Name of the check and the entry it was judged on, a phrase: `deflection L of span A to C`. */
  readonly what: string;
  readonly before?: { readonly ratio: number; readonly passes: boolean };
  readonly after?: { readonly ratio: number; readonly passes: boolean };
}

/** A member that can no longer be solved, or can be again. */
export interface OutcomeChange {
  readonly kind: 'no longer solved' | 'solved again' | 'added' | 'removed';
  readonly member: string;
  /** Why it has no results, where it has none. */
  readonly why?: string;
}

/** A member whose sheets a change reaches, and how: its check is open again. */
export interface Reach {
  readonly member: string;
  /** `definition`: its own file; `project`: something that all members share; `carried`: a reaction of the members named. */
  readonly by: 'definition' | 'project' | 'carried';
  /** Members that carry the change here; empty unless `carried`. */
  readonly from: readonly string[];
}

/** What differs between two packages; all lists empty where nothing does. */
export interface Comparison {
  readonly earlier: ComparedPackage;
  readonly later: ComparedPackage;
  /** In reading order of the folder: project.yaml, loads.yaml, then members in sheet order. */
  readonly inputs: readonly InputChange[];
  readonly outcomes: readonly OutcomeChange[];
  /** Newly failing first, then by member in sheet order. */
  readonly checks: readonly CheckChange[];
  /** By member in sheet order. */
  readonly results: readonly ResultChange[];
  /** In sheet order of the later package. */
  readonly reach: readonly Reach[];
}
