import type { Colour } from '../drawing/index.ts';
import { refuse } from './typeset-fault.ts';

/** CSS colour names that equations may use, as hex (CSS Color 4, §6.1). */
const names: Readonly<Record<string, string>> = {
  black: '#000000',
  blue: '#0000ff',
  brown: '#a52a2a',
  crimson: '#dc143c',
  cyan: '#00ffff',
  darkblue: '#00008b',
  darkgray: '#a9a9a9',
  darkgreen: '#006400',
  darkgrey: '#a9a9a9',
  darkorange: '#ff8c00',
  darkred: '#8b0000',
  dimgray: '#696969',
  dimgrey: '#696969',
  firebrick: '#b22222',
  forestgreen: '#228b22',
  fuchsia: '#ff00ff',
  gold: '#ffd700',
  gray: '#808080',
  green: '#008000',
  grey: '#808080',
  indigo: '#4b0082',
  lightblue: '#add8e6',
  lightgray: '#d3d3d3',
  lightgreen: '#90ee90',
  lightgrey: '#d3d3d3',
  lime: '#00ff00',
  magenta: '#ff00ff',
  maroon: '#800000',
  navy: '#000080',
  olive: '#808000',
  orange: '#ffa500',
  pink: '#ffc0cb',
  purple: '#800080',
  red: '#ff0000',
  royalblue: '#4169e1',
  silver: '#c0c0c0',
  slategray: '#708090',
  slategrey: '#708090',
  steelblue: '#4682b4',
  teal: '#008080',
  tomato: '#ff6347',
  violet: '#ee82ee',
  white: '#ffffff',
  yellow: '#ffff00',
};

/**
 * Reads a colour as an equation writes it: a CSS name, #rgb or #rrggbb. Undefined for
 * `transparent`, which keeps the room and draws nothing. Another name, or a colour that lets
 * what is below shine through (#rgba), is refused.
 */
export function readColour(written: string): Colour | undefined {
  if (written === 'transparent') return undefined;
  const hex = names[written.toLowerCase()] ?? written;
  const long = hex.replace(/^#([\da-f])([\da-f])([\da-f])$/i, '#$1$1$2$2$3$3');
  const match = /^#([\da-f]{2})([\da-f]{2})([\da-f]{2})$/i.exec(long);
  if (match === null) return refuse(`the colour "${written}"`);
  const [, red = '', green = '', blue = ''] = match;
  const share = (digits: string): number => Number.parseInt(digits, 16) / 255;
  return [share(red), share(green), share(blue)];
}
