import type { Given } from './read-arguments.ts';
import type { UsageFault } from './usage-fault.ts';

/** More stations than this help nobody and would fill the disk. */
const mostStations = 10_000;

/** The number that `--stations` gives, nothing where it is not given, or what is wrong with it. */
export function stationsIn(
  given: Given,
): { readonly stations?: number } | { readonly fault: UsageFault } {
  const text = given.value('stations');
  if (text === undefined) return {};
  const stations = /^\d{1,6}$/u.test(text) ? Number(text) : 0;
  return stations >= 1 && stations <= mostStations
    ? { stations }
    : {
        fault: {
          message: `--stations takes a whole number from 1 to ${mostStations}, not ${text}`,
          hints: ['write --stations 20 for the two ends and 19 places between'],
        },
      };
}
