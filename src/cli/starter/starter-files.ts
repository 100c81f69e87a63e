import { starterLoads } from './starter-loads.ts';
import { starterGirder, starterJoist } from './starter-members.ts';
import { starterProject } from './starter-project.ts';
import type { Units } from './units.ts';

/** Where the schemas lie that editors read, below the project folder; hidden, because nobody edits them. */
export const schemaFolder: string = '.schemas';

/** The definition files of a new project by path; they bind as they are. */
export function starterFiles(units: Units): Readonly<Record<string, string>> {
  return {
    'project.yaml': starterProject(units),
    'loads.yaml': starterLoads(units),
    'members/b1.yaml': starterJoist(units),
    'members/g1.yaml': starterGirder(units),
  };
}
