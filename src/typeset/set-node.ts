import type { PathStep } from '../drawing/index.ts';
import { boundedCache } from '../font/index.ts';
import type { FontBook } from '../font/index.ts';
import { readColour } from './colours.ts';
import type { EquationNode } from './equation-node.ts';
import { changeFace } from './node-setter.ts';
import type { Box, Inherited, NodeSetter, Setting } from './node-setter.ts';
import { setBar } from './nodes/bar.ts';
import { setFrame } from './nodes/frame.ts';
import { setGlyphs } from './nodes/glyphs.ts';
import { setLap } from './nodes/lap.ts';
import { setPicture } from './nodes/picture.ts';
import { setPoorBold } from './nodes/poor-bold.ts';
import { setRow } from './nodes/row.ts';
import { setRule } from './nodes/rule.ts';
import { setSeparator } from './nodes/separator.ts';
import { setStack } from './nodes/stack.ts';

/** Every kind of node, and the file that sets it. */
const setters: { readonly [Kind in EquationNode['kind']]: NodeSetter<Kind> } = {
  glyphs: setGlyphs,
  row: setRow,
  stack: setStack,
  bar: setBar,
  rule: setRule,
  separator: setSeparator,
  frame: setFrame,
  picture: setPicture,
  lap: setLap,
  'poor-bold': setPoorBold,
};

/** Outlines kept: KaTeX names about seventy; roots and tall brackets add one for each height. */
const outlinesKept = 500;

/** Opens a setting: what measures the nodes of all equations set with one font book. */
export function openSetting(fonts: FontBook): Setting {
  const outlines = boundedCache<readonly PathStep[]>(outlinesKept);
  const setting: Setting = {
    fonts,
    outlines,
    set: (node, from) => setNode(node, from, setting),
  };
  return setting;
}

function setNode(node: EquationNode, inherited: Inherited, setting: Setting): Box {
  const own = inheritInto(node, inherited);
  // The record is keyed by kind, which the compiler cannot follow through a union.
  const setter = setters[node.kind] as NodeSetter<EquationNode['kind']>;
  return withRoom(node, own.scale, setter(node, own, setting));
}

function inheritInto(node: EquationNode, inherited: Inherited): Inherited {
  const { scale, face, colour, align } = node;
  if (
    scale === 1 &&
    face === undefined &&
    colour === undefined &&
    align === undefined
  ) {
    return inherited;
  }
  return {
    ...(face === undefined ? inherited : changeFace(inherited, face)),
    scale: inherited.scale * scale,
    // What is inside something invisible stays invisible, whatever colour it asks for.
    colour:
      colour === undefined || inherited.colour === undefined
        ? inherited.colour
        : readColour(colour),
    align: align ?? inherited.align,
  };
}

/** Puts the room before and after around a box, and its shift. */
function withRoom(node: EquationNode, scale: number, inner: Box): Box {
  const { before, after, drop, shift, advance } = node;
  const isPlain = before === 0 && after === 0 && drop === 0 && shift === 0;
  if (isPlain && advance === undefined) return inner;
  const room = (before + after) * scale;
  const width = room + (advance === undefined ? inner.width : advance * scale);
  return {
    width,
    fills: inner.fills,
    place: (pen, x, y, given) => {
      const own = inner.fills ? given - room : inner.width;
      inner.place(pen, x + (before + shift) * scale, y + drop * scale, own);
    },
  };
}
