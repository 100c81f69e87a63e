import { factorLu, solveLu } from '../linear/lu.ts';
import type { BeamStructure } from '../structure.ts';
import { tidyStructure } from '../tidy-structure.ts';
import { solvedSpan, spanForms, type SpanState } from './end-moments.ts';
import { equationOf, type JointEquation } from './joint-equations.ts';
import { movementsOf, type UnknownMovement } from './joint-movements.ts';
import { componentsOf } from './joint-reactions.ts';
import { jointsOf, loadsInside, type Joint } from './joints.ts';
import type { LinearForm } from './linear-form.ts';
import { spanStiffness } from './span-stiffness.ts';
import { stiffnessAt } from './stretches.ts';

/** An unknown movement with its value, times EI₀. */
export interface JointUnknown extends UnknownMovement {
  readonly value: number;
}

/** Slope-deflection worked for one case. Movements are times the reference stiffness EI₀. */
export interface SlopeDeflection {
  readonly EI: number;
  readonly joints: readonly Joint[];
  readonly spans: readonly SpanState[];
  readonly unknowns: readonly JointUnknown[];
  /** EI₀ times turn and movement of each joint, as forms. */
  readonly rotations: readonly (LinearForm | undefined)[];
  readonly deflections: readonly LinearForm[];
  readonly equations: readonly JointEquation[];
  /** Values of every restraint, support by support. */
  readonly components: readonly (readonly number[])[];
}

/**
 * Slope-deflection for one case: rotations of joints, movements of those that nothing holds across
 * the beam, and its slide where inclined supports alone hold it, from the equilibrium of the joints. Ends
 * whose moment is known (hinges, simple ends) do not turn as unknowns; the equation of their span is
 * cleared of them.
 * — Wilson & Maney, Slope-deflection method, University of Illinois Bulletin 80, 1915 (from memory);
 * for spans of varying stiffness the factors come from the turns of their ends by virtual work.
 *
 * @throws RangeError where the beam is unstable or the structure is no beam.
 */
export function slopeDeflection(
  structure: BeamStructure,
  mark: string,
): SlopeDeflection {
  const tidy = tidyStructure(structure);
  const joints = jointsOf(tidy, mark);
  const EI = stiffnessAt(tidy.stiffness ?? [], tidy.points[0]?.x ?? 0);
  const frame = movementsOf(tidy, { joints, mark, EI });
  const unsolved = joints.slice(1).map((joint, index) => {
    const from = joints[index]?.x ?? joint.x;
    const part = { from, to: joint.x };
    const stiffness = spanStiffness(tidy, {
      mark,
      EI,
      ...part,
      loads: loadsInside(tidy, mark, part),
    });
    return spanForms(frame, index, stiffness);
  });
  const equations = frame.unknowns.map((unknown) =>
    equationOf(tidy, { frame, spans: unsolved, unknown, mark }),
  );
  const values = solveSymmetric(equations);
  const spans = unsolved.map((span) => solvedSpan(span, values));
  const unknowns = frame.unknowns.map((unknown, i) => ({
    ...unknown,
    value: values[i] ?? 0,
  }));
  const { rotations, deflections } = frame;
  const components = componentsOf(tidy, { frame, spans, values, mark });
  return { EI, joints, spans, unknowns, rotations, deflections, equations, components };
}

/** Solves symmetric equations, scaled so that their diagonal is 1. */
function solveSymmetric(equations: readonly JointEquation[]): readonly number[] {
  const scale = equations.map(({ factors }, i) => 1 / Math.sqrt(factors[i] ?? 1));
  const matrix = equations.map(({ factors }, i) =>
    factors.map((factor, j) => factor * (scale[i] ?? 1) * (scale[j] ?? 1)),
  );
  const right = equations.map(({ known }, i) => known * (scale[i] ?? 1));
  return solveLu(factorLu(matrix), right).map((value, i) => value * (scale[i] ?? 1));
}
