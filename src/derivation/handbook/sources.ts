/** The tables that formulas are quoted from; one cites a case and a page. */
export interface Sources {
  readonly openTables: string;
  readonly hicks: (number: number, page: number) => string;
  readonly hicksContinuous: string;
  readonly aisc: string;
  readonly roark: string;
  readonly fixedEnds: string;
  readonly continuous: string;
}

/** Where the formulas are tabulated. Those that do not say `from memory` were read. */
export const sources: Sources = {
  /** Tables of slopes and deflections of simple beams and cantilevers. */
  openTables:
    'Strength of Materials (open textbook, Engineering Mechanics OER), Appendix B',
  /** Beam formulas after Callender, by number of case and page. */
  hicks: (number: number, page: number): string =>
    `T. G. Hicks, Civil Engineering Formulas, figure 2.2, case ${number}, p. ${page}`,
  /** Uniformly loaded continuous beams over equal spans. */
  hicksContinuous: 'T. G. Hicks, Civil Engineering Formulas, table 2.1, p. 50',
  /** Shears, moments and deflections. */
  aisc: 'AISC, Steel Construction Manual, table 3-23, from memory',
  /** Shear, moment, slope and deflection formulas of elastic straight beams. */
  roark:
    'W. C. Young and R. G. Budynas, Roark’s Formulas for Stress and Strain, table 8.1, from memory',
  /** Moments of beams with fixed ends. */
  fixedEnds: 'tables of fixed-end moments of structural handbooks, from memory',
  /** Coefficients of continuous beams on equal spans. */
  continuous:
    'tables of continuous beams on equal spans of structural handbooks, from memory',
};
