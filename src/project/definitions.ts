import type { Span } from '../diagnostics/index.ts';
import type { GivenQuantity } from '../units/index.ts';

/** A value that remembers who said it: the file (with the place), or a default of the program. */
export interface Stated<T> {
  readonly value: T;
  readonly origin: 'given' | 'default';
  /** The place in the file; absent for defaults. */
  readonly span?: Span;
}

/** A person of the project and the date that stands beside the name for the present revision. */
export interface Person {
  readonly name: string;
  readonly initials: string;
  /** ISO date; absent: the initials are not printed in a box. */
  readonly date?: string;
  readonly licence?: string;
}

/** One row of the record of revisions. */
export interface Revision {
  readonly mark: string;
  readonly date?: string;
  readonly note?: string;
  readonly reason?: string;
  readonly prepared?: string;
  readonly checked?: string;
  readonly sheets?: string;
}

/** Where the package stands. */
export type Status = 'preliminary' | 'for review' | 'issued' | 'superseded' | 'void';

/** Positive senses that the project prints; results.json always counts right, up, counterclockwise. */
export interface Conventions {
  readonly moments: Stated<'counterclockwise' | 'clockwise'>;
  readonly horizontal: Stated<'right' | 'left'>;
  readonly vertical: Stated<'up' | 'down'>;
  readonly momentDiagram: Stated<'compression' | 'tension'>;
}

/** A design load that is printed as given, whether it governs or not. */
export interface DesignLoad {
  readonly item: string;
  readonly symbol?: string;
  readonly value: string;
  readonly source?: string;
  readonly level?: string;
}

/** An assumption of the engineer's. */
export interface Assumption {
  readonly id: string;
  readonly text: string;
  readonly basis?: string;
  readonly confirmed: boolean;
  readonly track?: string;
}

/** A document that the package leans on. */
export interface Reference {
  readonly id: string;
  readonly text: string;
}

/** A deflection limit: the entry it is for (a case, a combination or a service sum) and the span divisor or length. */
export interface DeflectionLimit {
  readonly entry: string;
  /** As written, `L/360`. */
  readonly text: string;
  readonly span: Span;
}

/** project.yaml, checked. */
export interface ProjectDefinition {
  readonly number?: string;
  readonly title: string;
  readonly discipline: Stated<string>;
  readonly client?: string;
  readonly location?: string;
  readonly office?: string;
  readonly stage?: string;
  readonly logo?: string;
  readonly status: Stated<Status>;
  readonly supersedes?: {
    readonly number?: string;
    readonly revision?: string;
    readonly bag?: string;
  };
  readonly people: {
    readonly prepared?: Person;
    readonly checked?: Person;
    readonly approved?: Person;
  };
  readonly revisions: readonly Revision[];
  readonly units: 'us' | 'si';
  readonly lengths: Stated<'decimal' | 'feet-inches'>;
  readonly paper: Stated<'letter' | 'a4'>;
  readonly figures: Stated<number>;
  readonly conventions: Conventions;
  readonly standards: readonly string[];
  readonly deflectionLimits: readonly DeflectionLimit[];
  /** `plain`: limits take cantilevers and overhangs with their own length; absent: with twice their length. */
  readonly cantilevers?: 'doubled' | 'plain';
  readonly designLoads: readonly DesignLoad[];
  readonly assumptions: readonly Assumption[];
  readonly references: readonly Reference[];
  readonly cautions: readonly string[];
  readonly methods: Readonly<Record<string, string>>;
  readonly sheetOrder?: readonly string[];
  /** Cross-sections and materials that the project adds to the built-in tables, by name. */
  readonly sections: Readonly<Record<string, CrossSection>>;
  readonly materials: Readonly<Record<string, Material>>;
}

/** What a load case is, which decides how combinations take it. */
export type CaseKind =
  | 'dead'
  | 'live'
  | 'roof-live'
  | 'snow'
  | 'rain'
  | 'wind'
  | 'seismic'
  | 'earth'
  | 'fluid'
  | 'temperature'
  | 'settlement';

/** A load case of the project. */
export interface LoadCase {
  readonly mark: string;
  readonly title?: string;
  /** Absent where the file does not say (cases that only the loads name). */
  readonly kind?: CaseKind;
  readonly source?: string;
  readonly pattern: boolean;
  /** Category of EN 1990 Table A1.1. */
  readonly category?: string;
}

/** A load per area, by case. */
export interface AreaLoad {
  readonly name: string;
  readonly source?: string;
  readonly byCase: Readonly<Record<string, GivenQuantity>>;
}

/** What `combinations` lists: a named set, or a sum of the user's own. */
export type CombinationRequest =
  | {
      readonly kind: 'named-set';
      readonly name: 'asce7-strength' | 'asce7-allowable' | 'en1990-uls' | 'en1990-sls';
      /** EN 1990 only: `6.10` (default) or `6.10ab`, and nationally determined values by name. */
      readonly expression?: '6.10' | '6.10ab';
      readonly national?: Readonly<Record<string, number>>;
      readonly span: Span;
    }
  | {
      readonly kind: 'custom';
      readonly mark: string;
      readonly factors: Readonly<Record<string, number>>;
      readonly for: 'strength' | 'service';
      readonly span: Span;
    };

/** loads.yaml, checked; without the file the cases are those that the loads name. */
export interface LoadsDefinition {
  readonly given: boolean;
  readonly cases: readonly LoadCase[];
  readonly areas: Readonly<Record<string, AreaLoad>>;
  readonly combinations: readonly CombinationRequest[];
  readonly alternatives: readonly (readonly string[])[];
}

/** Properties of a cross-section; each as given, or from a table with its source. */
export interface CrossSection {
  /** A designation, a name of the project's, or absent where the values stand in the member. */
  readonly name?: string;
  readonly I?: GivenQuantity;
  readonly S?: GivenQuantity;
  readonly A?: GivenQuantity;
  readonly weight?: GivenQuantity;
  readonly depth?: GivenQuantity;
  /** Where the values come from; absent for values in the definition itself. */
  readonly source?: string;
}

/** Properties of a material. */
export interface Material {
  readonly name?: string;
  readonly E?: GivenQuantity;
  readonly density?: GivenQuantity;
  readonly expansion?: GivenQuantity;
  readonly source?: string;
}

/** A named point of a beam. `written` is as the file gives it (`+4 ft`, `12'-6"`). */
export interface BeamPoint {
  readonly name: string;
  /** Station from the origin of the file's axis, in metres. */
  readonly x: number;
  readonly given: GivenQuantity;
  /** True where the file gives the distance from the point before. */
  readonly relative: boolean;
  readonly span: Span;
}

/** A support of a beam as defined. */
export interface BeamSupport {
  readonly point: string;
  readonly type: 'pin' | 'roller' | 'fixed' | 'guide' | 'spring';
  /** Direction of an inclined roller's reaction, degrees from +x, counterclockwise; 90 for an ordinary one. */
  readonly normal?: GivenQuantity;
  readonly stiffness?: GivenQuantity;
  readonly rotation?: GivenQuantity;
  readonly settlement?: { readonly value: GivenQuantity; readonly case: string };
  readonly span: Span;
}

/** A place on a beam: a named point, or a station. */
export interface BeamPlace {
  readonly x: number;
  /** The point's name where the place is one (also where a station falls on one). */
  readonly point?: string;
  /** The station as written; absent for a name. */
  readonly given?: GivenQuantity;
}

/** A factor on a load, with the reason that the file must give. */
export interface LoadFactor {
  readonly factor: number;
  readonly because: string;
}

/**
 * One load of one case, as the sheet shows it: repeats (`at: [ … ]`) and several cases on a line
 * are spread out into single loads, area loads into loads per length with the product kept.
 */
export type BeamLoad = {
  /** Unique on the member, stable: order in the file. */
  readonly id: string;
  readonly case: string;
  readonly note?: string;
  /** Ids of assumptions and references that the load leans on. */
  readonly uses: readonly string[];
  readonly factor?: LoadFactor;
  readonly span: Span;
  /** Where the load comes from, when it is not written as such. */
  readonly from?: LoadOrigin;
} & (
  | {
      readonly kind: 'point';
      readonly at: BeamPlace;
      /** As given, before the factor. */
      readonly size: GivenQuantity;
      /** Where it points, degrees from +x, counterclockwise; down is 270. */
      readonly direction: LoadDirection;
    }
  | {
      readonly kind: 'distributed';
      readonly start: BeamPlace;
      readonly end: BeamPlace;
      /** Intensity at start and end, as given (equal for uniform loads), before the factor. */
      readonly sizes: readonly [GivenQuantity, GivenQuantity];
      readonly direction: LoadDirection;
      /** Force per length square to its direction, rather than per length of beam. */
      readonly per?: 'projection';
    }
  | {
      readonly kind: 'couple';
      readonly at: BeamPlace;
      readonly size: GivenQuantity;
      readonly turn: 'clockwise' | 'counterclockwise';
      readonly side?: 'left' | 'right';
    }
);

/** Where a force points. */
export interface LoadDirection {
  /** Degrees from +x, counterclockwise. */
  readonly degrees: number;
  /** As written: `down`, `300 deg`; absent where it is the default. */
  readonly text?: string;
}

/** Where a load comes from, when it is not written as such. */
export type LoadOrigin =
  | {
      readonly kind: 'area';
      readonly area: string;
      readonly pressure: GivenQuantity;
      readonly widths: readonly [GivenQuantity, GivenQuantity];
    }
  | {
      readonly kind: 'self-weight';
      readonly weight: GivenQuantity;
      readonly how: 'section-weight' | 'area-times-density';
    };

/** A reaction of another member, carried at one or several places. Resolved case by case by the load path. */
export interface CarriedReaction {
  readonly id: string;
  readonly member: string;
  readonly point: string;
  readonly at: BeamPlace;
  readonly times: number;
  readonly carry: 'vertical' | 'all';
  readonly side?: 'left' | 'right';
  readonly because?: string;
  readonly note?: string;
  readonly uses: readonly string[];
  readonly span: Span;
}

/** A beam, checked. */
export interface BeamDefinition {
  readonly kind: 'beam';
  readonly file: string;
  readonly mark: string;
  readonly markSpan: Span;
  readonly title?: string;
  readonly where?: {
    readonly level?: string;
    readonly grid?: string;
    readonly drawing?: string;
  };
  readonly typical?: { readonly count: number; readonly note?: string };
  readonly points: readonly BeamPoint[];
  readonly supports: readonly BeamSupport[];
  readonly supportsSpan: Span;
  readonly hinges: readonly {
    readonly point: string;
    readonly x: number;
    readonly span: Span;
  }[];
  readonly loads: readonly BeamLoad[];
  readonly carried: readonly CarriedReaction[];
  /** The case of the self-weight, where it is asked for. */
  readonly selfWeight?: string;
  /** One entry a stretch; a single entry for a prismatic beam, none where nothing is given. */
  readonly sections: readonly {
    readonly from: BeamPlace;
    readonly to: BeamPlace;
    readonly section: CrossSection;
  }[];
  readonly material?: Material;
  readonly deflectionLimits?: readonly DeflectionLimit[];
  /** Replaces the project's reading of cantilevers for this member. */
  readonly cantilevers?: 'doubled' | 'plain';
  readonly bracing?: { readonly top?: string; readonly bottom?: string };
  readonly cautions: readonly string[];
  readonly uses: readonly string[];
}

/** A checked member of any kind. */
export type MemberDefinition = BeamDefinition;

/** A definition file as it was read, for the input echo. */
export interface DefinitionFile {
  readonly path: string;
  readonly text: string;
  /** SHA-256 of the bytes. */
  readonly sha256: string;
}

/** A project folder, read and checked. Members in sheet order. */
export interface Project {
  readonly folder: string;
  readonly definition: ProjectDefinition;
  readonly loads: LoadsDefinition;
  readonly members: readonly MemberDefinition[];
  /** Members whose own file holds an error: their mark (the file's name where it has none) and title, with the diagnostics in the outcome. */
  readonly faulty: readonly {
    readonly mark: string;
    readonly kind: string;
    readonly title?: string;
    readonly file: string;
  }[];
  readonly files: readonly DefinitionFile[];
  /** Templates of the project's own, by file name. */
  readonly templates: Readonly<Record<string, string>>;
  /** Pictures that sheets may place, by path. */
  readonly images: Readonly<Record<string, Uint8Array>>;
  /** theme.yaml, as plain values to lay over the default theme; checked against its shape. */
  readonly theme: Readonly<Record<string, unknown>>;
}
