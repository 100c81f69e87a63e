import { formatQuantity, type Unit, type UnitFactor } from '../units/index.ts';
import type { Figure } from './expression.ts';

/** A figure read out, its sign `minus` where it leads and `negative` after an operator: `minus 8.4 kip`, `36.9 times 10 to the 6 mm to the fourth`. */
export function speakFigure(figure: Figure, isLeading: boolean): string {
  const printed = formatQuantity(figure.quantity, figure.unit, figure.print);
  const digits = printed.mantissa
    .replaceAll(/[\u2009\u202f]/g, '')
    .replaceAll(/(\d+) (\d+\/\d+)/g, '$1 and $2');
  const power = String(printed.exponent).replace('-', 'minus ');
  const number = printed.exponent === 0 ? digits : `${digits} times 10 to the ${power}`;
  const signed = printed.negative
    ? `${isLeading ? 'minus' : 'negative'} ${number}`
    : number;
  const unit = printed.compound ? '' : speakUnit(figure.unit);
  return unit === '' ? signed : `${signed} ${unit}`;
}

const ordinals: Readonly<Record<number, string>> = {
  2: 'squared',
  3: 'cubed',
  4: 'to the fourth',
  5: 'to the fifth',
  6: 'to the sixth',
};

/** A unit read out: `kip ft`, `kN per m squared`, `per K`, `degrees`; nothing for a pure number. */
export function speakUnit(unit: Unit): string {
  const said = (sign: 1 | -1): string =>
    unit.factors
      .filter(({ power }) => power * sign > 0)
      .map(speakFactor)
      .join(' ');
  return [said(1), said(-1) === '' ? '' : `per ${said(-1)}`].join(' ').trim();
}

const spoken: ReadonlyMap<string, string> = new Map([
  ['deg', 'degrees'],
  ['°C', 'degrees Celsius'],
  ['°F', 'degrees Fahrenheit'],
]);

function speakFactor({ symbol, power }: UnitFactor): string {
  const size = Math.abs(power);
  const base = spoken.get(symbol) ?? symbol;
  const named = power < 0 ? base.replace('degrees', 'degree') : base;
  return size === 1 ? named : `${named} ${ordinals[size] ?? `to the power ${size}`}`;
}
