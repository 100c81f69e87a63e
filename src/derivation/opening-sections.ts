import type { Project } from '../project/index.ts';
import { patternCautions } from './arrangements/pattern-cautions.ts';
import type { BeamWork } from './beam-work.ts';
import type { MemberContext } from './case-context.ts';
import { judgedOf } from './closing-sections.ts';
import type { Section } from './derivation.ts';
import { narrateCautions } from './narrators/narrate-cautions.ts';
import { narrateGiven } from './narrators/narrate-given.ts';
import { narrateDeterminacy, narrateSupports } from './narrators/narrate-statics.ts';
import {
  asLoadedFigure,
  freeBodyFigure,
  piecesFigure,
} from './pictures/member-figures.ts';

/** Items 1 to 3 of a sheet, with the cautions that matter to it. */
export function openingSections(
  project: Project,
  work: BeamWork,
  context: MemberContext,
): readonly Section[] {
  const cautions = [
    ...narrateCautions(context, work.solution.determinacy, judgedOf(work)),
    ...patternCautions(context, project.loads.cases),
    ...work.cautions,
  ];
  return [
    {
      kind: 'given',
      steps: [
        ...narrateGiven(context, project.loads.cases, work.carried),
        { kind: 'figure', shows: 'as-loaded', figure: asLoadedFigure(context) },
        ...cautions,
      ],
    },
    {
      kind: 'supports',
      steps: [
        ...narrateSupports(context),
        { kind: 'figure', shows: 'free-body', figure: freeBodyFigure(context) },
      ],
    },
    {
      kind: 'determinacy',
      steps: [
        ...narrateDeterminacy(context, work.solution.determinacy),
        ...(work.structure.hinges.length === 0
          ? []
          : [
              {
                kind: 'figure',
                shows: 'pieces',
                figure: piecesFigure(context),
              } as const,
            ]),
      ],
    },
  ];
}
