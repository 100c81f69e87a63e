import { describe, expect, test } from 'vitest';
import {
  arrangementText,
  choiceNames,
} from '../../../src/derivation/arrangements/choice-names.ts';
import { derivedFolder, siProject } from '../../support/derived.ts';
import { beamYaml } from '../../support/folder.ts';

const { works } = derivedFolder({
  'project.yaml': siProject,
  'loads.yaml':
    'cases: { L: { kind: live, pattern: true }, K: { kind: live, pattern: true } }\n',
  'members/b1.yaml': beamYaml({
    points: '{ A: 0 m, B: 10 m, C: 14 m }',
    supports: '{ A: pin, B: roller }',
    loads: '[ { uniform: { L: 2 kN/m, K: 1 kN/m } }, { case: L, point: 3 kN, at: B } ]',
  }),
  'members/g1.yaml': beamYaml({
    mark: 'G1',
    points: '{ A: 0 m, B: 6 m }',
    supports: '{ A: fixed }',
    loads: '[ { reaction: B1.A, at: B } ]',
  }),
});

/** The words for taking the first option of every choice but those asked for, by their places in the list. */
const textOf = (index: number, taken: Readonly<Record<number, string>>): string => {
  const { definition, arranged } = works[index]!;
  const choices = (arranged.choices ?? []).map(({ id, options }, place) => ({
    id,
    option: taken[place] ?? options[0]!.name,
  }));
  return arrangementText(choiceNames(definition, arranged), { choices, trains: [] });
};

describe('an arrangement in words', () => {
  test('lists the loaded spans case by case, loads at a support by its name', () => {
    expect(textOf(0, { 0: 'on', 1: 'on', 4: 'on' })).toBe('L on A–B, at B; K on B–C');
    expect(textOf(0, {})).toBe('L on no span; K on no span');
  });

  test('says what is taken of a carried reaction', () => {
    expect(textOf(1, { 0: 'greatest', 1: 'least' })).toBe(
      'L of B1.A greatest; K of B1.A least',
    );
  });

  test('is empty where nothing is to be chosen', () => {
    expect(arrangementText(new Map(), { choices: [], trains: [] })).toBe('');
  });
});
