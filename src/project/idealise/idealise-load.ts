import type { Load } from '../../statics/index.ts';
import type { BeamLoad } from '../definitions.ts';
import { directionCosines } from './direction-cosines.ts';

/** A load as numbers along x and y, its factor applied; undefined for one of no size, which no sum needs. */
export function idealiseLoad(load: BeamLoad): Load | undefined {
  const factor = load.factor?.factor ?? 1;
  const base = { id: load.id, case: load.case };
  switch (load.kind) {
    case 'point': {
      const force = load.size.si * factor;
      const [cx, cy] = cosinesOf(load.direction.degrees);
      return force === 0
        ? undefined
        : { ...base, kind: 'point', x: load.at.x, fx: force * cx, fy: force * cy };
    }
    case 'couple': {
      const moment =
        load.size.si * factor * (load.turn === 'counterclockwise' ? 1 : -1);
      const side = load.side === undefined ? {} : { side: load.side };
      return moment === 0
        ? undefined
        : { ...base, kind: 'couple', x: load.at.x, m: moment, ...side };
    }
    case 'distributed': {
      const [cx, cy] = cosinesOf(load.direction.degrees);
      // Square to its direction a length of beam shows its sine: a load straight along the beam finds none.
      const share = factor * (load.per === 'projection' ? Math.abs(cy) : 1);
      const [one, two] = [load.sizes[0].si * share, load.sizes[1].si * share];
      if (one === 0 && two === 0) return undefined;
      return {
        ...base,
        kind: 'distributed',
        from: load.start.x,
        to: load.end.x,
        x1: one * cx,
        y1: one * cy,
        x2: two * cx,
        y2: two * cy,
      };
    }
  }
}

const cosinesOf = (degrees: number): readonly [number, number] =>
  directionCosines((degrees * Math.PI) / 180);
