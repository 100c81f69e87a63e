import type { Colour } from '../../drawing/index.ts';
import type { PictureSupport } from '../figure-spec.ts';
import type { Point } from '../geometry/point.ts';
import type { Part } from '../ink/part.ts';
import { fixedEnd, fixedInside } from './fixed.ts';
import { guideEnd, guideInside } from './guide.ts';
import { pin } from './pin.ts';
import { roller } from './roller.ts';
import { pinWithRotationSpring } from './rotation-spring.ts';
import { spring } from './spring.ts';
import { symbolFrame } from './symbol-frame.ts';
import type { SymbolFrame } from './symbol-frame.ts';

/** Where a support stands on its member: at the left end, at the right end, or between. */
export type SupportPlace = 'left-end' | 'right-end' | 'inside';

/** What the drawing of a support symbol depends on. */
export interface SupportSetting {
  readonly point: Point;
  readonly place: SupportPlace;
  readonly colour: Colour;
  /** 1 for full size. */
  readonly scale: number;
}

type Symbols = Readonly<
  Record<PictureSupport['type'], (frames: Frames, place: SupportPlace) => Part>
>;

/** The frames that a symbol may ask for, by the direction of the reaction in each. */
interface Frames {
  readonly own: SymbolFrame;
  readonly facing: (normal: number) => SymbolFrame;
}

const symbols: Symbols = {
  pin: ({ own }) => pin(own),
  roller: ({ own }) => roller(own),
  spring: ({ own }) => spring(own),
  'pin-with-rotation-spring': ({ own }) => pinWithRotationSpring(own),
  fixed: ({ facing }, place) =>
    place === 'inside'
      ? fixedInside(facing(90), facing(270))
      : fixedEnd(facing(place === 'left-end' ? 0 : 180)),
  guide: ({ facing }, place) =>
    place === 'inside'
      ? guideInside(facing(0), facing(180))
      : guideEnd(facing(place === 'left-end' ? 0 : 180)),
};

/** The engineering symbol of a support. */
export function supportSymbol(support: PictureSupport, setting: SupportSetting): Part {
  const facing = (normal: number): SymbolFrame =>
    symbolFrame(setting.point, normal, setting);
  const frames = { own: facing(support.normal ?? 90), facing };
  return symbols[support.type](frames, setting.place);
}
