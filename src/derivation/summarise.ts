import type { MemberContext } from './case-context.ts';
import type { Summary } from './derivation.ts';
import { signedGreatest, type Entry } from './narrators/governing.ts';
import { valueText } from './printing.ts';

/** The greatest moment, shear and reaction over the entries that a member is judged on. */
export function summarise(context: MemberContext, entries: readonly Entry[]): Summary {
  const { printing } = context;
  const all = entries.map(({ result }) => ({
    entry: result.mark,
    moment: signedGreatest(
      result.extremes.moment.max.value,
      result.extremes.moment.min.value,
    ),
    shear: signedGreatest(
      result.extremes.shear.max.value,
      result.extremes.shear.min.value,
    ),
    reactions: result.reactions.flatMap(({ point, y }) =>
      y === null ? [] : [{ point, si: y }],
    ),
  }));
  const greatest = (
    read: (one: (typeof all)[number]) => number,
  ): { si: number; entry: string } =>
    all.reduce<{ si: number; entry: string }>(
      (best, one) =>
        Math.abs(read(one)) > Math.abs(best.si)
          ? { si: read(one), entry: one.entry }
          : best,
      { si: 0, entry: all[0]?.entry ?? '' },
    );
  const moment = greatest((one) => one.moment);
  const shear = greatest((one) => one.shear);
  const reaction = all
    .flatMap(({ entry, reactions }) => reactions.map((one) => ({ ...one, entry })))
    .reduce((best, one) => (Math.abs(one.si) > Math.abs(best.si) ? one : best), {
      point: context.structure.supports[0]?.point ?? '',
      si: 0,
      entry: all[0]?.entry ?? '',
    });
  return {
    moment: { ...moment, text: valueText(printing, 'moment', moment.si) },
    shear: { ...shear, text: valueText(printing, 'force', shear.si) },
    reaction: { ...reaction, text: valueText(printing, 'force', reaction.si) },
  };
}
