import { shareAxially } from '../axial-sharing.ts';
import { actsAlongBeam } from '../determinacy.ts';
import type { BeamStructure, Restraint } from '../structure.ts';
import { asked, type SpanForms } from './end-moments.ts';
import { ownTerms } from './joint-equations.ts';
import { footOf, type Frame } from './joint-movements.ts';
import { sumOfForms, valueOfForm, type LinearForm } from './linear-form.ts';

/** Springs from their movement, rigid restraints from what is left at their joint, those along the beam last. */
export function componentsOf(
  structure: BeamStructure,
  of: {
    readonly frame: Frame;
    readonly spans: readonly SpanForms[];
    readonly values: readonly number[];
    readonly mark: string;
  },
): readonly (readonly number[])[] {
  const { frame, spans, values, mark } = of;
  const found = structure.supports.map(({ x, restraints }) => {
    const at = frame.joints.findIndex((joint) => joint.x === x);
    return restraints.map((restraint) => {
      if (restraint.stiffness !== undefined)
        return springForce(frame, { at, restraint, values });
      if (actsAlongBeam(restraint)) return 0;
      const kind = restraint.kind === 'moment' ? 'rotation' : 'deflection';
      const terms = [
        ...asked(spans, at, restraint.kind),
        ...ownTerms(frame, { kind, joint: at }),
      ];
      const left = valueOfForm(sumOfForms(terms), values);
      return restraint.kind === 'moment' ? left : left / restraint.direction[1];
    });
  });
  return structure.supports.some(({ restraints }) => restraints.some(actsAlongBeam))
    ? shareAxially(structure, mark, found)
    : found;
}

function springForce(
  { EI, mark, rotations, deflections, slide }: Frame,
  of: {
    readonly at: number;
    readonly restraint: Restraint;
    readonly values: readonly number[];
  },
): number {
  const { at, restraint, values } = of;
  const k = restraint.stiffness ?? 0;
  const value = (form: LinearForm | undefined): number =>
    form === undefined ? 0 : valueOfForm(form, values) / EI;
  const foot = footOf(restraint, mark);
  if (restraint.kind === 'moment') return -k * (value(rotations[at]) + foot);
  const [dx, dy] = restraint.direction;
  return -k * (dx * value(slide) + dy * value(deflections[at]) + foot);
}
