/** An exponent written small, as it stands at the head of a text: `²`, `⁻⁶`. */
export interface RaisedPower {
  readonly length: number;
  readonly isMinus: boolean;
  /** The same in plain digits. */
  readonly digits: string;
}

const raised = /^([⁺⁻]?)([⁰¹²³⁴⁵⁶⁷⁸⁹]+)/u;
const small = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** The small exponent at the head of a text; undefined where none stands there. */
export function raisedPower(text: string): RaisedPower | undefined {
  const [all, sense, digits = ''] = raised.exec(text) ?? [];
  if (all === undefined) return undefined;
  const plain = digits.replace(/./gu, (one) => String(small.indexOf(one)));
  return { length: all.length, isMinus: sense === '⁻', digits: plain };
}
