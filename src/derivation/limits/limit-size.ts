import { dimensions, parseQuantity, type GivenQuantity } from '../../units/index.ts';
import type { LimitSpan } from './limit-spans.ts';

/** A deflection limit as a size: a share of the span, or a length of its own. */
export type LimitSize =
  | {
      readonly kind: 'share';
      readonly divisor: number;
      /** How often the length counts: twice for overhangs (IBC Table 1604.3, note), unless that is turned off. */
      readonly times: 1 | 2;
      readonly si: number;
    }
  | { readonly kind: 'length'; readonly given: GivenQuantity; readonly si: number };

/**
 * The size of a limit such as `L/360` or `0.75 in` for a span.
 *
 * @throws RangeError where the text is neither: the project's reader has seen to it that it is.
 */
export function limitSize(
  text: string,
  span: LimitSpan,
  cantilevers: 'doubled' | 'plain',
): LimitSize {
  const divisor = Number(/^L\s*\/\s*(\d+(?:\.\d+)?)$/.exec(text)?.[1] ?? NaN);
  if (divisor > 0) {
    const times = span.kind === 'overhang' && cantilevers === 'doubled' ? 2 : 1;
    return {
      kind: 'share',
      divisor,
      times,
      si: (times * (span.to - span.from)) / divisor,
    };
  }
  const given = parseQuantity(text, dimensions.length).quantity;
  if (given === undefined) throw new RangeError(`${text} is no limit`);
  return { kind: 'length', given, si: given.si };
}
