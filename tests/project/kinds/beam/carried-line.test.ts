import { describe, expect, test } from 'vitest';
import { beamYaml, readFolder, soundFolder } from '../../../support/folder.ts';

const carriedBy = (
  line: string,
  supported: string = beamYaml({ mark: 'B2' }),
): unknown =>
  soundFolder({
    'members/b1.yaml': beamYaml({ loads: `[ ${line} ]` }),
    'members/b2.yaml': supported,
  }).members[0]?.carried;

describe('a carried reaction', () => {
  test('names member, point and place', () => {
    expect(carriedBy('{ reaction: B2.C, at: B }')).toMatchObject([
      {
        id: 'load-0001',
        member: 'B2',
        point: 'C',
        at: { point: 'B' },
        times: 1,
        carry: 'vertical',
        uses: [],
      },
    ]);
  });

  test('may come several times, whole, and with a reason', () => {
    expect(
      carriedBy(
        '{ reaction: B2.A, at: [ B, 10 ft ], times: 2, carry: all, because: both sides, note: Stringers }',
      ),
    ).toMatchObject([
      {
        id: 'load-0001',
        at: { point: 'B' },
        times: 2,
        carry: 'all',
        because: 'both sides',
        note: 'Stringers',
      },
      { id: 'load-0002', at: { x: expect.closeTo(3.048, 9) } },
    ]);
  });

  test('may come from a point whose name holds a dot', () => {
    const grid = beamYaml({
      mark: 'B2',
      points: '{ A.5: 0 m, B: 6 m }',
      supports: '{ A.5: pin, B: roller }',
    });
    expect(carriedBy('{ reaction: B2.A.5, at: B }', grid)).toMatchObject([
      { member: 'B2', point: 'A.5' },
    ]);
  });

  test('of a member at fault is no mistake of the member that carries it', () => {
    const { value } = readFolder({
      'members/b1.yaml': beamYaml({ loads: '[ { reaction: B2.C, at: B } ]' }),
      'members/b2.yaml': beamYaml({ mark: 'B2', supports: '{ A: pin, Z: roller }' }),
    });
    expect(value?.members.map((member) => member.mark)).toEqual(['B1']);
  });
});
