import type { BeamLoad, BeamTemperature } from '../../definitions.ts';
import type { Finding, Reading } from '../../reading.ts';

/** Remarks on loads that are legal and seldom meant: of no size, negative, or pointing up. One a line. */
export function remarkOn(loads: readonly BeamLoad[], reading: Reading): void {
  const said = new Set<string>();
  for (const load of loads) {
    const remark = remarkOf(load);
    if (remark === undefined || said.has(`${load.span.start} ${remark.code}`)) continue;
    said.add(`${load.span.start} ${remark.code}`);
    reading.report({ ...remark, severity: 'remark', span: load.span });
  }
}

/** Remarks on temperature differences of no size. One a line. */
export function remarkOnTemperatures(
  temperatures: readonly BeamTemperature[],
  reading: Reading,
): void {
  const lines = new Map(temperatures.map((one) => [one.span.start, one]));
  for (const { difference, factor, span } of lines.values())
    if (difference.si * (factor?.factor ?? 1) === 0)
      reading.report({
        code: 'load-zero',
        severity: 'remark',
        message: 'this temperature difference is 0',
        span,
        hints: ['take it out unless it is meant as a place holder'],
      });
}

function remarkOf(load: BeamLoad): Omit<Finding, 'span'> | undefined {
  const sizes =
    load.kind === 'distributed' ? load.sizes.map((size) => size.si) : [load.size.si];
  const factor = load.factor?.factor ?? 1;
  if (factor === 0 || sizes.every((size) => size === 0))
    return {
      code: 'load-zero',
      message: 'this load is 0',
      hints: ['take it out unless it is meant as a place holder'],
    };
  if (sizes.some((size) => size * factor < 0))
    return {
      code: 'load-negative',
      message:
        load.kind === 'couple'
          ? 'this couple is negative: it turns against the turn that it names'
          : 'this load is negative: it acts against its direction',
      hints: [
        load.kind === 'couple'
          ? 'name the other turn'
          : 'give the direction in which it acts',
      ],
    };
  if (
    load.kind !== 'couple' &&
    load.direction.degrees > 0 &&
    load.direction.degrees < 180
  )
    return {
      code: 'load-upward',
      message: 'this load has a part that acts upward',
      hints: [],
    };
  return undefined;
}
