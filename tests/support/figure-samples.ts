import type { Diagram, FigureSpec, PictureLoad } from '../../src/figure/index.ts';
import type { Piecewise } from '../../src/statics/index.ts';
import {
  beam,
  chain,
  couple,
  down,
  equal,
  member,
  number,
  push,
  symbol,
  uniform,
  unknown,
  varying,
  words,
} from './pictures.ts';

const ends = (end: number) => [
  { name: 'A', x: 0 },
  { name: 'B', x: end },
];

/** Shear and moment of a beam of 18 and 6 with an overhang under 1 a length and 9 at 9. */
function overhangDiagrams(): readonly Diagram[] {
  const shear: Piecewise = {
    pieces: [
      { start: 0, end: 9, coefficients: [12.5, -1] },
      { start: 9, end: 18, coefficients: [-5.5, -1] },
      { start: 18, end: 24, coefficients: [6, -1] },
    ],
  };
  const moment: Piecewise = {
    pieces: [
      { start: 0, end: 9, coefficients: [0, 12.5, -0.5] },
      { start: 9, end: 18, coefficients: [72, -5.5, -0.5] },
      { start: 18, end: 24, coefficients: [-18, 6, -0.5] },
    ],
  };
  return [
    {
      quantity: 'shear',
      title: words('V (kip)'),
      curves: [{ of: shear, style: 'solid' }],
      keyValues: [
        { x: 0, value: 12.5, side: 'right', label: number('12.5') },
        { x: 9, value: 3.5, side: 'left', label: number('3.5') },
        { x: 9, value: -5.5, side: 'right', label: number('-5.5') },
        { x: 18, value: -14.5, side: 'left', label: number('-14.5'), isExtreme: true },
        { x: 18, value: 6, side: 'right', label: number('6') },
        { x: 24, value: 0, label: number('0') },
      ],
      positive: 'up',
    },
    {
      quantity: 'moment',
      title: words('M (kip·ft)'),
      curves: [{ of: moment, style: 'solid' }],
      keyValues: [
        { x: 0, value: 0, label: number('0') },
        { x: 9, value: 72, label: number('72.0'), isExtreme: true },
        { x: 18, value: -18, label: number('-18.0'), isExtreme: true },
        { x: 24, value: 0, label: number('0') },
      ],
      positive: 'up',
    },
  ];
}

/** Figures of every sort, named, to be looked at and to be tested for clean placing. */
export const figureSamples: Readonly<Record<string, FigureSpec>> = {
  simple: member(
    beam(20, {
      points: ends(20),
      supports: [
        { x: 0, type: 'pin' },
        { x: 20, type: 'roller' },
      ],
      loads: [down(8, 8.4, '1')],
      dimensions: [chain(0, 8, 20), chain(0, 20)],
    }),
  ),
  uniformAndPoint: member(
    beam(24, {
      points: [...ends(18), { name: 'C', x: 24 }],
      supports: [
        { x: 0, type: 'pin' },
        { x: 18, type: 'roller' },
      ],
      loads: [uniform(0, 24, 1.2), down(6, 4, '1'), down(12, 8, '2'), down(24, 2, '3')],
      dimensions: [chain(0, 6, 12, 18, 24), chain(0, 18, 24)],
    }),
  ),
  thirty: member(
    beam(31, {
      points: ends(31),
      supports: [
        { x: 0, type: 'pin' },
        { x: 31, type: 'roller' },
      ],
      loads: Array.from({ length: 30 }, (_, index) =>
        down(index + 1, 1 + ((index * 7) % 11) / 2, String(index + 1)),
      ),
      dimensions: [chain(...Array.from({ length: 32 }, (_, index) => index))],
    }),
  ),
  cases: member(
    beam(20, {
      points: ends(20),
      supports: [
        { x: 0, type: 'fixed' },
        { x: 20, type: 'roller' },
      ],
      loads: [
        { ...uniform(0, 20, 0.8), case: 'D' },
        { ...down(14, 3, 'D'), case: 'D' },
        { ...uniform(0, 12, 1.5), case: 'L' },
        { ...down(14, 6, 'L'), case: 'L' },
        { ...varying(0, 20, [0.4, -0.5]), case: 'W' },
      ],
      dimensions: [chain(0, 14, 20)],
    }),
  ),
  cantilever: member(
    beam(10, {
      points: ends(10),
      supports: [{ x: 0, type: 'fixed' }],
      loads: [
        varying(0, 10, [2, 0]),
        push(10, 225, 3, '1'),
        couple(5, 'clockwise', 12),
        push(10, 0, 2),
      ],
      dimensions: [chain(0, 5, 10)],
    }),
  ),
  inclined: member(
    beam(16, {
      points: ends(16),
      supports: [
        { x: 0, type: 'pin' },
        { x: 16, type: 'roller', normal: 60 },
      ],
      loads: [
        push(4, 300, 5, '1'),
        push(9, 240, 7, '2'),
        push(12, 90, 3, '3'),
        push(7, 0, 2, '4'),
      ],
      dimensions: [chain(0, 4, 9, 12, 16)],
    }),
  ),
  supports: member(
    beam(60, {
      supports: [
        { x: 0, type: 'guide' },
        { x: 10, type: 'pin' },
        { x: 20, type: 'spring' },
        { x: 30, type: 'pin-with-rotation-spring' },
        { x: 40, type: 'roller', normal: 120 },
        { x: 45, type: 'fixed' },
        { x: 52, type: 'guide' },
        { x: 60, type: 'fixed' },
      ],
      hinges: [{ x: 5 }, { x: 25 }],
      points: [0, 5, 10, 20, 25, 30, 40, 45, 52, 60].map((x, index) => ({
        name: 'ABCDEFGHIJ'[index] ?? '',
        x,
      })),
    }),
  ),
  freeBody: {
    kind: 'free-body',
    alternate: 'A free body.',
    pictures: [
      beam(24, {
        points: [...ends(18), { name: 'C', x: 24 }],
        loads: [uniform(0, 24, 1.2), down(6, 4, '1'), push(12, 300, 8, '2')],
        reactions: [
          unknown(0, 90, 'AAy'),
          unknown(0, 0, 'AAx'),
          unknown(18, 90, 'BBy'),
        ],
        dimensions: [chain(0, 6, 12, 18, 24)],
      }),
    ],
  },
  parts: {
    kind: 'free-body',
    alternate: 'Two free bodies.',
    pictures: [
      {
        ...beam(14, {
          points: [
            { name: 'A', x: 0 },
            { name: 'B', x: 14 },
          ],
          loads: [uniform(0, 14, 1.2)],
          reactions: [
            unknown(0, 90, 'AAy'),
            unknown(0, 0, 'AAx'),
            { kind: 'moment', x: 0, turn: 'counterclockwise', label: symbol('M', 'A') },
            unknown(14, 270, 'BBy'),
            unknown(14, 180, 'BBx'),
          ],
          dimensions: [chain(0, 14)],
        }),
      },
      {
        ...beam(26, {
          points: [
            { name: 'B', x: 14 },
            { name: 'C', x: 26 },
          ],
          loads: [uniform(14, 26, 1.2), down(20, 6)],
          reactions: [
            unknown(14, 90, 'BBy'),
            unknown(14, 0, 'BBx'),
            unknown(26, 90, 'CCy'),
          ],
          dimensions: [chain(14, 20, 26)],
        }),
        start: 14,
      },
    ],
  },
  diagrams: {
    kind: 'diagrams',
    alternate: 'Shear and moment.',
    picture: beam(24, {
      points: [...ends(18), { name: 'C', x: 24 }],
      supports: [
        { x: 0, type: 'pin' },
        { x: 18, type: 'roller' },
      ],
      loads: [uniform(0, 24, 1), down(9, 9)],
    }),
    diagrams: overhangDiagrams(),
  },
  conventions: {
    kind: 'conventions',
    alternate: 'Sign conventions.',
    shown: [
      {
        what: { kind: 'forces', horizontal: 'right', vertical: 'up' },
        caption: 'Forces to the right and up are positive',
      },
      {
        what: { kind: 'moments', positive: 'counterclockwise' },
        caption: 'Counterclockwise moments are positive',
      },
      { what: { kind: 'axial' }, caption: 'Axial force: tension is positive' },
      { what: { kind: 'shear' }, caption: 'Shear: up on the left face' },
      {
        what: { kind: 'bending', drawnOn: 'compression' },
        caption: 'Moment: sagging is positive; drawn on the compression side',
      },
      {
        what: { kind: 'bending', drawnOn: 'tension' },
        caption: 'Moment drawn on the tension side',
      },
    ],
  },
  hinged: member(
    beam(30, {
      points: ['A', 'B', 'C', 'D', 'E'].map((name, index) => ({
        name,
        x: [0, 10, 13, 22, 30][index] ?? 0,
      })),
      supports: [
        { x: 0, type: 'fixed' },
        { x: 13, type: 'roller' },
        { x: 30, type: 'pin' },
      ],
      hinges: [{ x: 10 }, { x: 22 }],
      loads: [uniform(0, 13, 2), down(22, 5, '1'), down(26, 5, '2')],
      dimensions: [chain(0, 10, 13, 22, 26, 30), chain(0, 13, 30)],
    }),
  ),
  tinySpans: member(
    beam(40, {
      points: ['A', 'B', 'C', 'D', 'E', 'F'].map((name, index) => ({
        name,
        x: [0, 0.5, 1, 38, 39, 40][index] ?? 0,
      })),
      supports: [
        { x: 0.5, type: 'pin' },
        { x: 1, type: 'roller' },
        { x: 38, type: 'roller' },
        { x: 39, type: 'roller' },
      ],
      loads: [
        down(0, 2, '1'),
        down(0.3, 2, '2'),
        down(0.5, 9, '3'),
        uniform(38, 40, 3),
      ],
      dimensions: [chain(0, 0.5, 1, 38, 39, 40), chain(0, 40)],
    }),
  ),
  longLabels: member(
    beam(12, {
      points: [
        { name: 'north bearing', x: 0 },
        { name: 'splice', x: 5 },
        { name: 'south bearing', x: 12 },
      ],
      supports: [
        { x: 0, type: 'pin' },
        { x: 12, type: 'roller' },
      ],
      loads: [3, 4, 5, 6].map((x) => ({
        kind: 'force' as const,
        x,
        degrees: 270,
        size: 4,
        label: words(`reaction of the rafter at grid line ${x}, from sheet 12`),
      })),
      dimensions: [chain(0, 3, 4, 5, 6, 12)],
    }),
  ),
  downThenUp: {
    kind: 'free-body',
    alternate: 'A free body.',
    pictures: [
      beam(20, {
        points: ends(20),
        loads: [
          push(4, 90, 3, '1'),
          push(20, 90, 5, '2'),
          couple(20, 'counterclockwise', 8),
          push(10, 270, 6, '3'),
          couple(10, 'clockwise', 4),
          push(20, 180, 3, '4'),
        ],
        reactions: [
          unknown(0, 90, 'RA'),
          { kind: 'moment', x: 0, turn: 'clockwise', label: symbol('M', 'A') },
          unknown(0, 0, 'HA'),
          unknown(12, 60, 'RC'),
          unknown(14, 0, 'HD'),
        ],
        dimensions: [chain(0, 4, 10, 12, 20)],
      }),
    ],
  },
  varied: member(
    beam(30, {
      points: ends(30),
      supports: [
        { x: 4, type: 'pin' },
        { x: 26, type: 'roller' },
      ],
      loads: [
        varying(6, 24, [1.5, -1]),
        varying(0, 4, [0, 1]),
        couple(15, 'counterclockwise', 20),
        couple(30, 'clockwise', 5),
        { ...uniform(26, 30, 0.6), degrees: 90 } as PictureLoad,
        {
          kind: 'distributed',
          from: 8,
          to: 20,
          degrees: 0,
          sizes: [0.5, 0.5],
          labels: [equal('q', '', '0.5 kip/ft'), undefined],
        },
      ],
      dimensions: [chain(0, 4, 6, 24, 26, 30)],
    }),
  ),
};
