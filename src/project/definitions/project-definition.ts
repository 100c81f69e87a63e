import type { Span } from '../../diagnostics/index.ts';
import type { CrossSection, Material } from './properties.ts';
import type { Stated } from './stated.ts';

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
    /** Path of its bag, from the project folder. */
    readonly bag?: string;
    /** Where the bag is named. */
    readonly span?: Span;
  };
  /** The package that replaces this one, where it is superseded and the file names what by. */
  readonly supersededBy?: {
    readonly number?: string;
    readonly revision?: string;
    /** ISO date since when. */
    readonly date?: string;
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
  /** The hand methods that the project prefers where several would do. */
  readonly methods: PreferredMethods;
  readonly sheetOrder?: readonly string[];
  /** Cross-sections and materials that the project adds to the built-in tables, by name. */
  readonly sections: Readonly<Record<string, CrossSection>>;
  readonly materials: Readonly<Record<string, Material>>;
}

/** Hand methods by the members that they are for; absent: the program chooses. */
export interface PreferredMethods {
  /** For beams of two spans or more on simple supports. */
  readonly continuous?: 'three-moment' | 'moment-distribution' | 'slope-deflection';
}

/** Where the package stands. */
export type Status = 'preliminary' | 'for review' | 'issued' | 'superseded' | 'void';

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
  /** The row in project.yaml. */
  readonly span?: Span;
}

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
