import { type Frame } from './joint-movements.ts';
import {
  constantForm,
  sumOfForms,
  valueOfForm,
  type LinearForm,
} from './linear-form.ts';
import type { SpanStiffness } from './span-stiffness.ts';

/** An end of a span: it turns with its joint, or its moment is known beforehand. */
export type SpanEnd =
  | { readonly kind: 'turns'; readonly rotation: LinearForm }
  | { readonly kind: 'known'; readonly moment: number };

/** A span between two joints with its end moments, as forms and as values. */
export interface SpanState {
  readonly stiffness: SpanStiffness;
  /** The joints at its ends. */
  readonly joints: readonly [number, number];
  readonly ends: readonly [SpanEnd, SpanEnd];
  /** EI₀ times the turn of its chord. */
  readonly chord: LinearForm;
  readonly forms: readonly [LinearForm, LinearForm];
  readonly moments: readonly [number, number];
  /** Upward forces on its ends. */
  readonly shears: readonly [number, number];
}

/** A span before the unknowns are known. */
export type SpanForms = Omit<SpanState, 'moments' | 'shears'>;

/** The end moments of a span in terms of the unknowns. */
export function spanForms(
  frame: Frame,
  index: number,
  stiffness: SpanStiffness,
): SpanForms {
  const { rotations, deflections, joints, unknowns } = frame;
  const L = stiffness.to - stiffness.from;
  const none = constantForm(0, unknowns.length);
  const chord = sumOfForms([
    [1 / L, deflections[index + 1] ?? none],
    [-1 / L, deflections[index] ?? none],
  ]);
  const endAt = (at: number, side: 'left' | 'right'): SpanEnd => {
    const rotation = rotations[at];
    if (rotation !== undefined) return { kind: 'turns', rotation };
    const joint = joints[at];
    const both = joint === undefined ? { left: 0, right: 0 } : joint.couple;
    const moment = joint?.isHinge === true ? both[side] : both.left + both.right;
    return { kind: 'known', moment };
  };
  // The couple at a hinge names its side; the left end of a span lies right of its joint.
  const ends = [endAt(index, 'right'), endAt(index + 1, 'left')] as const;
  return {
    stiffness,
    joints: [index, index + 1],
    ends,
    chord,
    forms: endForms(stiffness, ends, chord),
  };
}

function endForms(
  { aa, bb, ab, fixed }: SpanStiffness,
  [a, b]: readonly [SpanEnd, SpanEnd],
  chord: LinearForm,
): readonly [LinearForm, LinearForm] {
  const count = chord.factors.length;
  const known = (moment: number): LinearForm => constantForm(moment, count);
  if (a.kind === 'turns' && b.kind === 'turns') {
    return [
      sumOfForms([
        [aa, a.rotation],
        [ab, b.rotation],
        [-(aa + ab), chord],
        [1, known(fixed.a)],
      ]),
      sumOfForms([
        [ab, a.rotation],
        [bb, b.rotation],
        [-(bb + ab), chord],
        [1, known(fixed.b)],
      ]),
    ];
  }
  if (a.kind === 'turns' && b.kind === 'known') {
    const rest = fixed.a - (ab / bb) * (fixed.b - b.moment);
    const k = aa - (ab * ab) / bb;
    return [
      sumOfForms([
        [k, a.rotation],
        [-k, chord],
        [1, known(rest)],
      ]),
      known(b.moment),
    ];
  }
  if (b.kind === 'turns' && a.kind === 'known') {
    const rest = fixed.b - (ab / aa) * (fixed.a - a.moment);
    const k = bb - (ab * ab) / aa;
    return [
      known(a.moment),
      sumOfForms([
        [k, b.rotation],
        [-k, chord],
        [1, known(rest)],
      ]),
    ];
  }
  return [
    known(a.kind === 'known' ? a.moment : 0),
    known(b.kind === 'known' ? b.moment : 0),
  ];
}

/** The upward force on an end of a span, as a form. */
function shearForm({ forms, stiffness }: SpanForms, end: 0 | 1): LinearForm {
  const L = stiffness.to - stiffness.from;
  const sign = end === 0 ? 1 : -1;
  const simple = end === 0 ? stiffness.simple.a : stiffness.simple.b;
  return sumOfForms([
    [sign / L, forms[0]],
    [sign / L, forms[1]],
    [1, constantForm(simple, forms[0].factors.length)],
  ]);
}

/** What the spans at a joint ask of it: the upward force, or the moment, that it must give them. */
export function asked(
  spans: readonly SpanForms[],
  joint: number,
  what: 'force' | 'moment',
): readonly (readonly [number, LinearForm])[] {
  return spans.flatMap((span): readonly (readonly [number, LinearForm])[] =>
    ([0, 1] as const).flatMap((end) => {
      if (span.joints[end] !== joint) return [];
      return [[1, what === 'force' ? shearForm(span, end) : span.forms[end]] as const];
    }),
  );
}

/** The same with the unknowns known. */
export function solvedSpan(span: SpanForms, values: readonly number[]): SpanState {
  return {
    ...span,
    moments: [valueOfForm(span.forms[0], values), valueOfForm(span.forms[1], values)],
    shears: [
      valueOfForm(shearForm(span, 0), values),
      valueOfForm(shearForm(span, 1), values),
    ],
  };
}
