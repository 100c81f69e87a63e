import { describe, expect, test } from 'vitest';
import {
  deriveMembers,
  workMembers,
  type BeamWork,
  type MemberWork,
} from '../../src/derivation/index.ts';
import { readProject, type Project } from '../../src/project/index.ts';
import { memoryWorld } from '../../src/world/index.ts';

const world = memoryWorld({
  'p/project.yaml': 'project: { title: Footbridge }\nunits: us\n',
  'p/members/b1.yaml':
    'mark: B1\nkind: beam\npoints: { A: 0 ft, B: 21 ft }\nsupports: { A: pin, B: roller }\nloads: [ { point: 8.4 kip, at: 6 ft } ]\n',
});

function worked(): {
  readonly project: Project;
  readonly works: readonly MemberWork[];
} {
  const project = readProject(world, 'p').value;
  if (project === undefined) throw new Error('the project cannot be read');
  return { project, works: workMembers(project, []) };
}

/** The same work with one value of its solution put wrong, as a fault of the solver would. */
function withReaction(
  works: readonly MemberWork[],
  share: number,
): readonly MemberWork[] {
  return works.map((one) =>
    one.kind === 'worked' ? { ...one, work: putWrong(one.work, share) } : one,
  );
}

function putWrong(work: BeamWork, share: number): BeamWork {
  const results = work.solution.results.map((result) => ({
    ...result,
    reactions: result.reactions.map((reaction) =>
      reaction.point === 'B' && reaction.y !== null
        ? { ...reaction, y: reaction.y * share }
        : reaction,
    ),
  }));
  return { ...work, solution: { ...work.solution, results } };
}

describe('narrating members', () => {
  test('a member whose checks agree is derived', () => {
    const { project, works } = worked();
    expect(deriveMembers(project, works).map(({ kind }) => kind)).toEqual(['derived']);
  });

  test('a member with a wrong value is withheld, with the check that found it', () => {
    const { project, works } = worked();
    const [member] = deriveMembers(project, withReaction(works, 1.001));
    expect(member).toMatchObject({ kind: 'failed', mark: 'B1', memberKind: 'beam' });
    if (member?.kind !== 'failed') throw new Error('it was not withheld');
    expect(member.diagnostics.length).toBeGreaterThan(0);
    for (const diagnostic of member.diagnostics)
      expect(diagnostic).toMatchObject({
        severity: 'error',
        code: 'check-failed',
        member: 'B1',
        message: expect.stringMatching(/^case all: /) as string,
      });
  });
});
