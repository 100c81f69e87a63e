import { byForm, byKey } from '../../shape/choice.ts';
import { optional, required } from '../../shape/field.ts';
import { listOf, oneOrMore } from '../../shape/list.ts';
import { numberFrom } from '../../shape/number.ts';
import { objectOf } from '../../shape/object.ts';
import { quantityOf } from '../../shape/quantity.ts';
import { placed, turned, type Shape } from '../../shape/shape.ts';
import { oneOf, text } from '../../shape/text.ts';
import {
  at,
  common,
  ownCase,
  per,
  perCase,
  pointing,
  side,
  stretch,
} from './load-fields.ts';
import type {
  AreaLine,
  CoupleLine,
  LoadLine,
  PointLine,
  ReactionLine,
  UniformLine,
  VaryingLine,
} from './load-line.ts';
import { temperatureLine } from './temperature-shape.ts';
import { axlesLine } from './train-shape.ts';

const perLength = quantityOf('force-per-length');

const lines = {
  point: objectOf<PointLine>('a point load', {
    ...common,
    case: ownCase,
    point: required(perCase(quantityOf('force'), 'text'), 'the force, or one a case'),
    at,
    direction: pointing,
  }),
  uniform: objectOf<UniformLine>('a uniform load', {
    ...common,
    ...stretch,
    case: ownCase,
    uniform: required(
      perCase(perLength, 'text'),
      'the force per length, or one a case',
    ),
    direction: pointing,
    per,
  }),
  varying: objectOf<VaryingLine>('a varying load', {
    ...common,
    ...stretch,
    case: ownCase,
    varying: required(
      perCase(listOf(perLength, { atLeast: 2, atMost: 2 }), 'list'),
      'the forces per length at its start and its end, or such a pair a case',
    ),
    direction: pointing,
    per,
  }),
  couple: objectOf<CoupleLine>('a couple', {
    ...common,
    case: ownCase,
    couple: required(
      perCase(quantityOf('moment'), 'text'),
      'the moment of the couple, or one a case',
    ),
    at,
    turn: required(oneOf('clockwise', 'counterclockwise'), 'which way it turns'),
    side,
  }),
  area: objectOf<AreaLine>('an area load', {
    ...common,
    ...stretch,
    area: required(placed(text), 'the name of an area load of loads.yaml'),
    width: required(
      byForm({
        text: turned(quantityOf('length', 'not-negative'), (width) => [width, width]),
        list: listOf(quantityOf('length', 'not-negative'), { atLeast: 2, atMost: 2 }),
      }),
      'the tributary width, or the widths at start and end',
    ),
    direction: pointing,
  }),
  reaction: objectOf<ReactionLine>('a carried reaction', {
    reaction: required(placed(text), 'the member and its support, such as B2.C'),
    at,
    times: optional(
      numberFrom({ from: 0.001, to: 1000 }),
      'how many such members deliver there. Default: 1',
    ),
    carry: optional(
      oneOf('vertical', 'all'),
      '`all` carries the x component and the moment too. Default: vertical',
    ),
    side,
    because: optional(text, 'the reason for `times`'),
    note: optional(text, 'what it is, for the sheet'),
    uses: optional(
      oneOrMore(placed(text)),
      'ids of assumptions and references that it leans on',
    ),
  }),
};

// The line takes its kind and its place with it; that its parts fit the kind is the record's doing.
function ofKind(kind: LoadLine['kind'], shape: Shape<object>): Shape<LoadLine> {
  return turned(
    shape,
    (line, tree) => ({ ...line, kind, lineSpan: tree.span }) as LoadLine,
  );
}

/** One entry of `loads`, told apart by the key that gives its size. */
export const loadShape: Shape<LoadLine> = byKey<LoadLine>(
  'a load such as { case: L, point: 3 kip, at: B }',
  {
    point: ofKind('point', lines.point),
    uniform: ofKind('uniform', lines.uniform),
    varying: ofKind('varying', lines.varying),
    couple: ofKind('couple', lines.couple),
    area: ofKind('area', lines.area),
    reaction: ofKind('reaction', lines.reaction),
    temperature: ofKind('temperature', temperatureLine),
    axles: ofKind('axles', axlesLine),
  },
);
