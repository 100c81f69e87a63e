import type { MemberContext } from './case-context.ts';
import type { Summary } from './derivation.ts';
import { judgedBy, signedGreatest, type Entry } from './narrators/governing.ts';
import { componentEnds } from './narrators/reaction-components.ts';
import { valueText } from './printing.ts';

/** The greatest moment, shear and reaction over the entries that a member is judged on. */
export function summarise(
  context: MemberContext,
  entries: readonly Entry[],
): Omit<Summary, 'limit' | 'failing' | 'unjudged'> {
  const { printing } = context;
  const all = entries.map((entry) => {
    const found = judgedBy(entry);
    const { moment, shear } = found.extremes;
    return {
      entry: found.mark,
      moment: signedGreatest(moment.max.value, moment.min.value),
      shear: signedGreatest(shear.max.value, shear.min.value),
      reactions: found.reactions.map(({ point }) => {
        const { max, min } = componentEnds(found, { point, kind: 'y' });
        return { point, si: signedGreatest(max, min) };
      }),
    };
  });
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
