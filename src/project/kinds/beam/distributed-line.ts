import type { GivenQuantity } from '../../../units/index.ts';
import type { BeamLoad } from '../../definitions.ts';
import { spreadCases, type OfCase } from './cases.ts';
import { down } from './direction.ts';
import { basesOf } from './load-base.ts';
import type { LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';
import { readStretch } from './stretch.ts';

type UniformLine = Extract<LoadLine, { kind: 'uniform' }>;
type VaryingLine = Extract<LoadLine, { kind: 'varying' }>;
type Pair = readonly [GivenQuantity, GivenQuantity];

/** Uniform loads of one line: one for each case. */
export function readUniformLine(
  line: UniformLine,
  context: LoadContext,
): readonly BeamLoad[] {
  const sizes = spreadCases(line.uniform, line.case, context.premises, context.reading);
  const pairs = sizes.map(({ case: mark, value }) => ({
    case: mark,
    value: value && ([value, value] as const),
  }));
  return distributed(line, pairs, context);
}

/** Varying loads of one line, straight from the first size to the second: one for each case. */
export function readVaryingLine(
  line: VaryingLine,
  context: LoadContext,
): readonly BeamLoad[] {
  const sizes = spreadCases(line.varying, line.case, context.premises, context.reading);
  const pairs = sizes.map(({ case: mark, value: [start, end] = [] }) => ({
    case: mark,
    value: start && end && ([start, end] as const),
  }));
  return distributed(line, pairs, context);
}

function distributed(
  line: UniformLine | VaryingLine,
  sizes: readonly OfCase<Pair>[],
  context: LoadContext,
): readonly BeamLoad[] {
  const bases = basesOf(line, sizes, line.lineSpan, context);
  const reach = readStretch(
    line,
    { axis: context.axis, span: line.lineSpan },
    context.reading,
  );
  if (reach === undefined) return [];
  return bases.map(({ base, value }) => ({
    ...base,
    id: context.nextId(),
    kind: 'distributed',
    ...reach,
    sizes: value,
    direction: line.direction ?? down,
    ...(line.per === undefined ? {} : { per: line.per }),
  }));
}
