import type { Span } from '../../../diagnostics/index.ts';
import type { GivenQuantity } from '../../../units/index.ts';
import type { Reading } from '../../reading.ts';
import { caseMark } from '../../names.ts';
import { byForm, byWord } from '../../shape/choice.ts';
import { optional, required, type Field } from '../../shape/field.ts';
import { objectOf } from '../../shape/object.ts';
import { quantityOf } from '../../shape/quantity.ts';
import { placed, turned, type Placed, type Shape } from '../../shape/shape.ts';
import { oneOf } from '../../shape/text.ts';

/** A support as written, short form or long. */
export interface SupportEntry {
  readonly type: 'pin' | 'roller' | 'fixed' | 'guide' | 'spring';
  readonly normal?: GivenQuantity;
  readonly stiffness?: GivenQuantity;
  readonly rotation?: GivenQuantity;
  readonly settlement?: Placed<GivenQuantity>;
  readonly case?: Placed<string>;
}

type Of<T extends SupportEntry['type']> = { readonly type: T } & Omit<
  SupportEntry,
  'type'
>;

const typeOf = <T extends SupportEntry['type']>(type: T): Field<T> =>
  required(oneOf(type), 'what kind of support this is');
const rotation = optional(
  quantityOf('rotational-stiffness', 'positive'),
  'stiffness against turning, a moment per angle',
);
const settlement = {
  settlement: optional(
    placed(quantityOf('length')),
    'how far the foot of the support sinks, downward positive',
  ),
  case: optional(
    placed(caseMark),
    'the case of the settlement; may be left out where there is only one',
  ),
};

const pin = objectOf<Pick<Of<'pin'>, 'type' | 'rotation' | 'settlement' | 'case'>>(
  'a pin',
  {
    type: typeOf('pin'),
    rotation,
    ...settlement,
  },
);
const roller = objectOf<
  Pick<Of<'roller'>, 'type' | 'normal' | 'rotation' | 'settlement' | 'case'>
>('a roller', {
  type: typeOf('roller'),
  normal: optional(
    quantityOf('angle'),
    'direction of the reaction from +x, counterclockwise. Default: 90 deg, an ordinary roller',
  ),
  rotation,
  ...settlement,
});
const fixed = objectOf<Pick<Of<'fixed'>, 'type' | 'settlement' | 'case'>>(
  'a fixed end',
  {
    type: typeOf('fixed'),
    ...settlement,
  },
);
const guide = objectOf<Pick<Of<'guide'>, 'type'>>('a guide', { type: typeOf('guide') });
const spring = objectOf<
  Pick<Of<'spring'>, 'type' | 'stiffness' | 'rotation' | 'settlement' | 'case'>
>('a spring', {
  type: typeOf('spring'),
  stiffness: optional(
    quantityOf('force-per-length', 'positive'),
    'stiffness in y, a force per length',
  ),
  rotation,
  ...settlement,
});

const longForm: Shape<SupportEntry> = byWord<SupportEntry>(
  'a map that begins with `type`',
  'type',
  {
    pin: pin,
    roller: roller,
    fixed: fixed,
    guide: guide,
    spring: spring,
  },
);

const shortForm: Shape<SupportEntry> = turned(
  oneOf('pin', 'roller', 'fixed', 'guide', 'spring'),
  (type, tree, reading) => {
    if (type !== 'spring') return { type };
    reportNoStiffness(tree.span, reading.report);
    return undefined;
  },
);

/** A support: `pin`, or a map with its `type` and particulars. */
export const supportEntry: Shape<SupportEntry> = byForm({
  text: shortForm,
  map: turned(longForm, (entry, tree, reading) => {
    if (
      entry.type === 'spring' &&
      entry.stiffness === undefined &&
      entry.rotation === undefined
    ) {
      reportNoStiffness(tree.span, reading.report);
      return undefined;
    }
    if (entry.settlement === undefined && entry.case !== undefined)
      reading.report({
        code: 'case-without-load',
        message: 'a case is given here, but no settlement that belongs to it',
        span: entry.case.span,
        hints: ['add `settlement`, or take the case out'],
      });
    if (
      entry.settlement !== undefined &&
      entry.type === 'spring' &&
      entry.stiffness === undefined
    )
      reading.report({
        code: 'settlement-without-hold',
        message:
          'a spring against turning alone does not follow a settlement of its foot',
        span: entry.settlement.span,
        hints: ['add `stiffness`, or take the settlement out'],
      });
    return entry;
  }),
});

function reportNoStiffness(span: Span, report: Reading['report']): void {
  report({
    code: 'missing-key',
    message: 'a spring needs `stiffness`, `rotation` or both',
    span,
    hints: ['write { type: spring, stiffness: 40 kip/in }'],
  });
}
