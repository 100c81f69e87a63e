/** An option of a command. */
export interface Option {
  readonly type: 'string' | 'boolean';
  readonly short?: string;
  /** May be given several times. */
  readonly multiple?: boolean;
  /** What its value is, in capitals, for help. */
  readonly value?: string;
  /** What it does, a phrase. */
  readonly about: string;
}
