import fc from 'fast-check';
import type { Resultant } from '../../../src/statics/index.ts';
import type { LineTerm } from './line-terms.ts';

/** How a line is written: signs turned, terms shuffled, sides, units, lumps, how finely it is rounded. */
export const styles = fc.record({
  isTurned: fc.boolean(),
  isClockwise: fc.boolean(),
  order: fc.array(fc.nat(1000), { minLength: 40, maxLength: 40 }),
  sides: fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
  forms: fc.array(fc.nat(5), { minLength: 40, maxLength: 40 }),
  form: fc.constantFrom('zero', 'nothing', 'sides', 'front', 'solved', 'ratios'),
  system: fc.constantFrom('kN', 'N', 'kip', 'lb' as const),
  figures: fc.constantFrom(3, 4, 5),
  lumps: fc.constantFrom(0, 0, 2, 3),
  pick: fc.nat(100),
});

export type Style = typeof styles extends fc.Arbitrary<infer T> ? T : never;

const units = {
  kN: { force: 1000, length: 1, names: ['kN', 'm'] },
  N: { force: 1, length: 1, names: ['N', 'm'] },
  kip: { force: 4448.2216152605, length: 0.3048, names: ['kip', 'ft'] },
  lb: { force: 4.4482216152605, length: 0.3048, names: ['lb', 'ft'] },
} as const;

/** So many figures, plain decimals. */
export function figures(value: number, count: number): string {
  const text = Number(value.toPrecision(count));
  return text.toLocaleString('en', { useGrouping: false, maximumFractionDigits: 15 });
}

/** A force, a couple or a length with its unit. */
export function inUnits(
  value: number,
  what: 'force' | 'moment' | 'length' | 'intensity',
  style: Style,
  count: number = style.figures,
): string {
  const { force, length, names } = units[style.system];
  const [f, l] = names;
  switch (what) {
    case 'force':
      return `${figures(value / force, count)} ${f}`;
    case 'moment':
      return `${figures(value / force / length, count)} ${f} ${l}`;
    case 'length':
      return `${figures(value / length, count)} ${l}`;
    case 'intensity':
      return `${figures((value / force) * length, count)} ${f}/${l}`;
  }
}

/** Several terms lumped into one number, where a style asks for that. */
export function lumped(terms: readonly LineTerm[], style: Style): readonly LineTerm[] {
  const loads = terms.filter(({ what }) => what !== 'unknown');
  if (style.lumps === 0 || loads.length < style.lumps + 1) return terms;
  const some = loads.slice(0, style.lumps);
  const net = some.reduce((sum, { sign, worth }) => sum + sign * worth, 0);
  const gross = some.reduce((sum, { worth }) => sum + worth, 0);
  // Rounding of a number that nearly cancels tells nothing.
  if (Math.abs(net) < 0.2 * gross) return terms;
  const lump: LineTerm = {
    what: 'lump',
    sign: net < 0 ? -1 : 1,
    size: Math.abs(net),
    worth: Math.abs(net),
    x: 0,
  };
  return [...terms.filter((term) => !some.includes(term)), lump];
}

/** A term as text, in one of its forms. */
function termText(
  term: LineTerm,
  style: Style,
  setting: { readonly form: number; readonly isForces: boolean },
): string {
  const { form } = setting;
  const by = term.slip ?? {};
  const arm =
    term.arm === undefined
      ? undefined
      : inUnits(term.arm * (by.arm ?? 1), 'length', style);
  const size = sizeText(term, style, setting);
  if (arm === undefined) return size;
  const isPlain = !/ [-*/+] /u.test(size);
  if (form === 0) return `${arm} * ${isPlain ? size : `(${size})`}`;
  if (form === 1 && isPlain) return `${size} (${arm})`;
  return `${size} * ${arm}`;
}

function sizeText(
  term: LineTerm,
  style: Style,
  { form, isForces }: { readonly form: number; readonly isForces: boolean },
): string {
  const scale = term.slip?.size ?? 1;
  if (term.symbol !== undefined) {
    const share = term.size * scale;
    return Math.abs(share - 1) < 1e-9
      ? term.symbol
      : `${term.symbol} * ${figures(share, 4)}`;
  }
  const isMoment = term.what === 'couple' || (term.what === 'lump' && !isForces);
  const { resultant } = term;
  if (resultant === undefined || form < 3)
    return inUnits(term.size * scale, isMoment ? 'moment' : 'force', style);
  return resultantText(term.size * scale, resultant, { style, form });
}

/** A resultant worked from its intensity: 0.25 kip/ft * 21 ft, half of it for a triangle. */
function resultantText(
  size: number,
  resultant: Resultant,
  { style, form }: { readonly style: Style; readonly form: number },
): string {
  const base = resultant.to - resultant.from;
  const half = resultant.shape === 'triangle' ? 2 : 1;
  const intensity = (size * half) / base;
  const [w, l] = [
    inUnits(intensity, 'intensity', style),
    inUnits(base, 'length', style),
  ];
  if (half === 1) return `${w} * ${l}`;
  return form === 4 ? `1/2 * ${w} * ${l}` : `${w} * ${l} / 2`;
}

/** The text of a line in a style; `solved` and `ratios` give one unknown in front, with what it comes to. */
export function written(
  terms: readonly LineTerm[],
  style: Style,
  isForces: boolean,
): string {
  const order = terms
    .map((term, index) => ({ term, at: style.order[index % 40]!, index }))
    .sort((a, b) => a.at - b.at || a.index - b.index);
  const text = (term: LineTerm, index: number): string =>
    termText(term, style, { form: style.forms[index % 40]!, isForces });
  const unknowns = terms.filter(({ what }) => what === 'unknown');
  const front = unknowns[style.pick % Math.max(unknowns.length, 1)];
  if (front !== undefined && (style.form === 'solved' || style.form === 'ratios')) {
    const line = solvedFor(front, order, { style, text });
    if (line !== undefined) return line;
  }
  return inSides(order, style, text);
}

function inSides(
  order: readonly { readonly term: LineTerm; readonly index: number }[],
  style: Style,
  text: (term: LineTerm, index: number) => string,
): string {
  const left: string[] = [];
  const right: string[] = [];
  for (const { term, index } of order) {
    const isRight = style.form === 'sides' && style.sides[index % 40]!;
    const sign = term.sign * (style.isTurned ? -1 : 1) * (isRight ? -1 : 1);
    (isRight ? right : left).push(`${sign < 0 ? '-' : '+'} ${text(term, index)}`);
  }
  if (style.form === 'sides') return `${side(left)} = ${side(right)}`;
  if (style.form === 'front') return `0 = ${side(left)}`;
  return style.form === 'nothing' ? side(left) : `${side(left)} = 0`;
}

function side(texts: readonly string[]): string {
  return texts.length === 0 ? '0' : texts.join(' ').replace(/^\+ /u, '');
}

/** `R = (…) / 21 ft`, or with bare ratios `R = 8.4 kip * 6/21 + …`. */
function solvedFor(
  front: LineTerm,
  order: readonly { readonly term: LineTerm; readonly index: number }[],
  {
    style,
    text,
  }: {
    readonly style: Style;
    readonly text: (term: LineTerm, index: number) => string;
  },
): string | undefined {
  const others = order.filter(({ term }) => term !== front);
  if (front.arm === undefined || others.length === 0) return undefined;
  const arm = front.arm * front.size * (front.slip?.arm ?? 1);
  const signOf = (term: LineTerm): string => (term.sign * front.sign > 0 ? '-' : '+');
  if (style.form === 'solved') {
    const inner = others.map(
      ({ term, index }) => `${signOf(term)} ${text(term, index)}`,
    );
    return `${front.symbol} = (${side(inner)}) / (${inUnits(arm, 'length', style, 5)})`;
  }
  if (others.some(({ term }) => term.arm === undefined || term.what === 'unknown'))
    return undefined;
  const length = units[style.system].length;
  const ratio = others.map(({ term }) => {
    const own = (term.arm! * (term.slip?.arm ?? 1)) / length;
    const size = inUnits(term.size * (term.slip?.size ?? 1), 'force', style);
    return `${signOf(term)} ${size} * ${figures(own, 5)}/${figures(arm / length, 5)}`;
  });
  return `${front.symbol} = ${side(ratio)}`;
}
