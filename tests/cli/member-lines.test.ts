import { describe, expect, test } from 'vitest';
import { memberLines } from '../../src/cli/member-lines.ts';
import { formatRatio, readResults, resultsOf, workProject } from '../../src/index.ts';
import type { BeamResults, Results } from '../../src/index.ts';
import { shed } from '../support/command-line.ts';

const unstable =
  'mark: B2\nkind: beam\npoints: { A: 0 ft, B: 8 ft }\nsupports: { A: roller, B: roller }\n';

function lines(
  changes: Parameters<typeof shed>[0],
  turn: (now: Results) => Results = (now) => now,
  before?: Results,
): readonly string[] {
  const worked = workProject(shed(changes), 'shed');
  const reading = readResults(resultsOf(worked));
  if (reading.kind !== 'results') throw new Error(reading.kind);
  return memberLines({
    members: worked.members,
    now: turn(reading.results),
    before,
    writeRatio: formatRatio,
  });
}

function withChecks(ratios: readonly number[]): (now: Results) => Results {
  return (now) => ({
    ...now,
    members: now.members.map((member) =>
      'error' in member || member.mark !== 'B1'
        ? member
        : {
            ...member,
            checks: ratios.map((ratio): BeamResults['checks'][number] => ({
              name: 'deflection',
              clause: '',
              combination: 'S',
              demand: { value: ratio, unit: 'in' },
              capacity: { value: 1, unit: 'in' },
              ratio,
              passes: ratio <= 1,
            })),
          },
    ),
  });
}

describe('the lines after binding', () => {
  test('give each member its governing moment and reaction in columns', () => {
    expect(lines({})).toEqual([
      'B1   Ridge beam   M 6.000 kip·ft (S)   R 1.000 kip at A (S)',
      'B2                M 2.000 kip·ft (S)   R 0.5000 kip at A (S)',
    ]);
  });

  test('say of a member without results why it has none', () => {
    expect(lines({ 'members/b2.yaml': unstable })).toContain(
      'B2                no results: unstable',
    );
  });

  test('give the greatest ratio where limits were judged, and say when one is not kept', () => {
    expect(lines({}, withChecks([0.4, 0.62]))[0]).toMatch(/ratio 0\.62$/);
    expect(lines({}, withChecks([0.4, 1.0004]))[0]).toMatch(/ratio 1\.0004 NOT OK$/);
  });

  test('tell what changed since the run before, and which members are gone', () => {
    const before = (): Results => {
      const reading = readResults(resultsOf(workProject(shed(), 'shed')));
      if (reading.kind !== 'results') throw new Error(reading.kind);
      const [b1] = reading.results.members;
      if (b1 === undefined) throw new Error('no member');
      return { ...reading.results, members: [b1, { ...b1, mark: 'B9' }] };
    };
    const now = lines({}, undefined, before());
    expect(now[0]).toMatch(/as before$/);
    expect(now[1]).toMatch(/new$/);
    expect(now[2]).toBe('No longer in the package: B9');
  });
});
