import type { Drawing } from '../../drawing/index.ts';
import { arrowStyles } from '../figure-setting.ts';
import type { ArrowStyles, FigureSetting } from '../figure-setting.ts';
import type { Label } from '../figure-spec.ts';
import { besidePoint } from '../labels/candidates.ts';
import type { Side } from '../labels/candidates.ts';
import type { Point } from '../geometry/point.ts';
import type { Part } from '../ink/part.ts';
import { openBoard } from '../board.ts';
import type { Strip } from '../strip.ts';
import { setSmall } from '../labels/small-label.ts';

/** A small drawing of a convention while it is drawn, about the origin. */
export interface Sketch {
  readonly arrows: ArrowStyles;
  readonly setting: FigureSetting;
  readonly draw: (part: Part) => void;
  /** Sets a letter (`V`) or a sign (`+`) beside a point. */
  readonly letter: (text: string, point: Point, side: Side | 'on') => void;
  readonly strip: () => Strip;
}

/** An empty sketch. */
export function openSketch(setting: FigureSetting): Sketch {
  const board = openBoard();
  return {
    arrows: arrowStyles(setting.theme),
    setting,
    draw: (part) => board.draw(part),
    letter: (text, point, side) => {
      const label: Drawing = setSmall(letterLabel(text), setting);
      const box =
        side === 'on'
          ? besidePoint({ x: point.x, y: point.y + label.height / 2 }, 'n', label, {
              x: 0,
              y: 0,
            })
          : besidePoint(point, side, label, { x: 2.6, y: 2.2 });
      board.write(label, box);
    },
    strip: board.strip,
  };
}

function letterLabel(text: string): Label {
  return /^[A-Za-z]$/.test(text)
    ? {
        kind: 'expression',
        expression: { kind: 'name', symbol: { letter: text, meaning: text } },
      }
    : { kind: 'text', text };
}
