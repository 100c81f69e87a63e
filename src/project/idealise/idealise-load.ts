import type { Load } from '../../statics/index.ts';
import type { BeamLoad } from '../definitions.ts';
import { present } from '../shape/present.ts';
import { directionCosines } from './direction-cosines.ts';

/** A load as numbers along x and y, its factor applied; undefined for one of no size, which no sum needs. */
export function idealiseLoad(load: BeamLoad): Load | undefined {
  switch (load.kind) {
    case 'point':
      return pointLoad(load);
    case 'couple':
      return couple(load);
    case 'distributed':
      return distributedLoad(load);
  }
}

type Of<K extends BeamLoad['kind']> = Extract<BeamLoad, { readonly kind: K }>;

function pointLoad(load: Of<'point'>): Load | undefined {
  const force = load.size.si * factorOf(load);
  const [cx, cy] = cosinesOf(load);
  if (force === 0) return undefined;
  return {
    ...baseOf(load),
    kind: 'point',
    x: load.at.x,
    fx: force * cx,
    fy: force * cy,
  };
}

function couple(load: Of<'couple'>): Load | undefined {
  const sense = load.turn === 'counterclockwise' ? 1 : -1;
  const m = load.size.si * factorOf(load) * sense;
  if (m === 0) return undefined;
  return present<Load>({
    ...baseOf(load),
    kind: 'couple',
    x: load.at.x,
    m,
    side: load.side,
  });
}

function distributedLoad(load: Of<'distributed'>): Load | undefined {
  const [cx, cy] = cosinesOf(load);
  // Square to its direction a length of beam shows its sine: a load straight along the beam finds none.
  const share = factorOf(load) * (load.per === 'projection' ? Math.abs(cy) : 1);
  const [one, two] = [load.sizes[0].si * share, load.sizes[1].si * share];
  if (one === 0 && two === 0) return undefined;
  return {
    ...baseOf(load),
    kind: 'distributed',
    from: load.start.x,
    to: load.end.x,
    x1: one * cx,
    y1: one * cy,
    x2: two * cx,
    y2: two * cy,
  };
}

const baseOf = ({ id, case: mark }: BeamLoad): { id: string; case: string } => ({
  id,
  case: mark,
});

const factorOf = (load: BeamLoad): number => load.factor?.factor ?? 1;

const cosinesOf = (load: Of<'point'> | Of<'distributed'>): readonly [number, number] =>
  directionCosines((load.direction.degrees * Math.PI) / 180);
