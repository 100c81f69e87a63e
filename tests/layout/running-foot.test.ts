import { describe, expect, test } from 'vitest';
import { foot, paragraph, part, report } from '../support/blocks.ts';
import { layOutReport } from '../support/layout-tools.ts';
import { footOf, runsOf, shapesOf } from '../support/read-pages.ts';
import type { RunningFoot } from '../../src/report/index.ts';
import type { Page } from '../../src/layout/index.ts';

function pageWith(more: Partial<RunningFoot>): Page {
  const given = part('B1', [paragraph('Text.')], { foot: { ...foot, ...more } });
  return layOutReport(report([given])).pages[0]!;
}

/** The foot's rules: those that are no part of the text. */
const rules = (page: Page): number =>
  shapesOf(page).filter(({ artifact }) => artifact === 'pagination').length;

describe('setFoot', () => {
  test('spells out what identifies the sheet', () => {
    const page = pageWith({ subject: 'B1 Stringer', checked: 'T. Oja, 3 May 2026' });
    expect(footOf(page)).toBe(
      'Project Harbour steps Number 0417 Status Preliminary Sheet 1 of 1 ' +
        'B1 Stringer Revision A, 2 May 2026 Prepared N. Aho, 1 May 2026 Checked T. Oja, 3 May 2026',
    );
    expect(rules(page)).toBe(1);
  });

  test('leaves a blank to sign on where nobody has checked', () => {
    const page = pageWith({ checked: '' });
    expect(footOf(page)).toMatch(/Checked$/);
    expect(rules(page)).toBe(2);
  });

  test('leaves out what is not given', () => {
    const { project, subject, prepared, checked, status } = foot;
    const bare = part('B1', [], {
      foot: { project, subject, prepared, checked, status },
    });
    const said = footOf(layOutReport(report([bare])).pages[0]!);
    expect(said).not.toContain('Number');
    expect(said).not.toContain('Revision');
  });

  test('cuts long entries short rather than run into each other or off the sheet', () => {
    const endless = 'a very long name of something that goes on '.repeat(6);
    const page = pageWith({
      project: endless,
      subject: endless,
      status: endless,
      prepared: endless,
      revision: endless,
    });
    const runs = runsOf(page).filter(({ artifact }) => artifact === 'pagination');
    expect(runs.some(({ text }) => text.endsWith('…'))).toBe(true);
    for (const one of runs) {
      expect(one.right).toBeLessThanOrEqual(612 - 36 + 1e-6);
      for (const other of runs) {
        if (one === other || Math.abs(one.y - other.y) > 1 || other.x < one.x) continue;
        expect(one.right).toBeLessThan(other.x);
      }
    }
  });
});
