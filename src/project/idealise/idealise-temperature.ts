import type { FreeCurvature } from '../../statics/index.ts';
import type { BeamTemperature } from '../definitions.ts';

/**
 * The curvature that a temperature difference gives a free stretch, its factor applied: the fibre
 * at the warmer top grows by α dT more over the depth h, so v″ = −α dT / h and the beam bows upward.
 */
export function idealiseTemperature({
  id,
  case: mark,
  start,
  end,
  difference,
  depth,
  expansion,
  factor,
}: BeamTemperature): FreeCurvature {
  const warmth = difference.si * (factor?.factor ?? 1);
  return {
    id,
    case: mark,
    from: start.x,
    to: end.x,
    // Adding 0 turns a minus zero into zero.
    curvature: (-expansion.si * warmth) / depth.si + 0,
  };
}
