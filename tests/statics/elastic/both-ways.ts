import { actingOn } from '../../../src/statics/elastic/acting.ts';
import { byMoments } from '../../../src/statics/elastic/by-moments.ts';
import { byStiffness } from '../../../src/statics/elastic/by-stiffness.ts';
import { elasticModel } from '../../../src/statics/elastic/elastic-model.ts';
import {
  roundedState,
  type ElasticState,
} from '../../../src/statics/elastic/elastic-state.ts';
import { solveSliding } from '../../../src/statics/elastic/solve-sliding.ts';
import { tidyStructure, type BeamStructure } from '../../../src/statics/index.ts';

/** The states of the first case of a beam as either way finds them. */
export function bothWays(
  structure: BeamStructure,
): Readonly<Record<string, ElasticState>> {
  const tidy = tidyStructure(structure);
  const model = elasticModel(tidy);
  const acting = actingOn(model, tidy, tidy.loads, tidy.cases[0]);
  const ways = { stiffness: byStiffness(model).way, moments: byMoments(model) };
  return Object.fromEntries(
    Object.entries(ways).map(([name, way]) => [
      name,
      roundedState(solveSliding(model, way)(acting)),
    ]),
  );
}
