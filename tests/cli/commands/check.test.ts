import { describe, expect, test } from 'vitest';
import { ran, shed } from '../../support/command-line.ts';

const sheet = (line: string): string =>
  `member: B1\nprepared: { name: J. Rowan }\nsteps:\n  - { sum: moments about A, write: "${line}" }\n`;
const right = sheet('-2 kip * 6 ft + RB * 12 ft = 0');
const wrong = sheet('2 kip * 6 ft + RB * 12 ft = 0');

describe('check', () => {
  test('answers 0 where every step is right, and writes nothing', async () => {
    const world = shed({ 'worked/b1.yaml': right });
    const files = world.files.size;
    const { code, out, err } = await ran(['check', 'shed'], world);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain(' 1  right  ');
    expect(world.files.size).toBe(files);
  });

  test('answers 1 where a step is wrong, and says what belongs there and who slipped', async () => {
    const { code, out } = await ran(
      ['check', 'shed'],
      shed({ 'worked/b1.yaml': wrong }),
    );
    expect(code).toBe(1);
    expect(out).toContain('sign at 2 kip * 6 ft: ');
    expect(out).toContain('belongs there: ');
    expect(out).toContain('J. Rowan  1 sheet, 1 step: 0 right, 1 wrong; sign 1');
  });

  test('marks the files that are named alone', async () => {
    const world = shed({ 'worked/b1.yaml': right, 'worked/b2.yaml': wrong });
    const { code, out } = await ran(['check', 'shed', 'worked/b1.yaml'], world);
    expect(code).toBe(0);
    expect(out).not.toContain('worked/b2.yaml');
  });

  test('prints format 1 as JSON', async () => {
    const { code, out } = await ran(
      ['check', 'shed', '--json'],
      shed({ 'worked/b1.yaml': wrong }),
    );
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({
      format: 1,
      worked: [{ member: 'B1', summary: { wrong: 1 } }],
    });
  });
});
