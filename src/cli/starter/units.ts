/** Systems of units that a new project may print. */
export type Units = 'us' | 'si';
