import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { testWith } from '../support/other-program.ts';
import { write } from '../support/paged-documents.ts';
import { sampleDocument, sampleOptions } from '../support/sample-document.ts';

let folder = '';
let file = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'written-pdf-'));
  file = join(folder, 'sample.pdf');
  writeFileSync(file, await write(sampleDocument, sampleOptions));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (program: string, ...options: string[]): string =>
  execFileSync(program, options, { encoding: 'utf8' });

describe('other programs that read PDF', () => {
  testWith('qpdf', 'qpdf finds no fault in syntax and streams', () => {
    expect(run('qpdf', '--check', file)).toContain(
      'No syntax or stream encoding errors',
    );
  });

  testWith('pdfinfo', 'poppler sees title, dates, tags and places', () => {
    const info = run('pdfinfo', '-isodates', file);
    expect(info).toMatch(/Title: +Brücke <A> & “B”/u);
    expect(info).toMatch(/CreationDate: +2026-03-14T00:00:00/u);
    expect(info).toMatch(/Tagged: +yes/u);
    expect(info).toMatch(/Pages: +3/u);
    expect(run('pdfinfo', '-dests', file)).toMatch(
      /3 \[ XYZ null +696 null +\] "Säule ½"/u,
    );
  });

  testWith(
    'pdfinfo',
    'poppler reads the structure in its order, text in its place',
    () => {
      const structure = run('pdfinfo', '-struct-text', file)
        .split('\n')
        .map((line) => line.trim());
      const at = (line: string): number => structure.indexOf(line);
      const order = [
        '"It hands its reaction to"',
        '"sheet 3"',
        '", where it is called"',
        '"and loads are from"',
        '"the county"',
        '"The paragraph ends on this sheet."',
      ].map(at);
      expect(order.every((place) => place > 0)).toBe(true);
      expect(order).toEqual([...order].sort((one, other) => one - other));
      expect(structure).toContain('/ColSpan 2');
    },
  );

  testWith(
    'pdffonts',
    'poppler finds every font embedded, cut down and readable',
    () => {
      const rows = run('pdffonts', file).trim().split('\n').slice(2);
      expect(rows).toHaveLength(4);
      for (const row of rows)
        expect(row).toMatch(/CID TrueType +Identity-H +yes yes yes/u);
    },
  );

  testWith(
    'pdftotext',
    'poppler copies equations as their linear text, at their place',
    () => {
      const text = run('pdftotext', '-layout', file, '-');
      expect(text).toMatch(/^ +M = w·ℓ²\/8$/mu);
      expect(text).toContain('40 kN');
      const [, ...sides] =
        /<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">M = w/u.exec(
          run('pdftotext', '-bbox', file, '-'),
        ) ?? [];
      const [left = 0, top = 0, right = 0, bottom = 0] = sides.map(Number);
      // The equation stands at (90, 150), is about 97 pt wide and 26 pt high.
      expect(left).toBeCloseTo(90, 1);
      expect(right).toBeGreaterThan(180);
      expect(right).toBeLessThan(190);
      expect(top).toBeGreaterThan(145);
      expect(bottom).toBeLessThan(180);
    },
  );

  testWith('pdfdetach', 'poppler takes an attachment out as it went in', () => {
    const target = join(folder, 'B1.yaml');
    run('pdfdetach', '-savefile', 'members/B1.yaml', '-o', target, file);
    expect(readFileSync(target, 'utf8')).toBe('mark: B1\ntitle: Deck beam\n');
  });

  testWith('mutool', 'mupdf reads the bookmarks and draws every page', () => {
    expect(run('mutool', 'show', file, 'outline')).toContain('"Säule ½ & more"');
    const drawn = spawnSync(
      'mutool',
      ['draw', '-q', '-r', '20', '-o', join(folder, 'p%d.png'), file],
      {
        encoding: 'utf8',
      },
    );
    expect(drawn.status).toBe(0);
    expect(
      drawn.stderr.replace('warning: ICC support is not available', '').trim(),
    ).toBe('');
    expect(existsSync(join(folder, 'p3.png'))).toBe(true);
  });

  testWith('gs', 'ghostscript interprets every page without a warning', () => {
    run(
      'gs',
      '-q',
      '-dNOPAUSE',
      '-dBATCH',
      '-sDEVICE=nullpage',
      '-dPDFSTOPONERROR',
      '-dPDFSTOPONWARNING',
      file,
    );
  });
});

describe('a validator of PDF/A-1b', () => {
  const jars = [
    'preflight',
    'pdfbox2',
    'fontbox2',
    'xmpbox',
    'commons-logging',
    'commons-io',
    'javax.activation',
    'jaxb-api',
  ].map((name) => `/usr/share/java/${name}.jar`);
  testWith('java', 'finds the same document valid, written as PDF/A-1b', () => {
    if (!jars.every((jar) => existsSync(jar))) {
      console.log('preflight is not installed: PDF/A-1b was not validated');
      return;
    }
    const twin = join(folder, 'twin.pdf');
    const answer = spawnSync(
      'java',
      ['-cp', jars.join(':'), 'org.apache.pdfbox.preflight.Validator_A1b', twin],
      {
        encoding: 'utf8',
      },
    );
    expect(answer.stdout).toContain('is a valid PDF/A-1b file');
  });

  beforeAll(async () => {
    // Part 1 knows no attachments and no opacity: the picture that is partly clear stays out.
    const pages = sampleDocument.pages.map(({ label, drawing }) => ({
      label,
      drawing: {
        ...drawing,
        marks: drawing.marks.map((mark) =>
          mark.kind === 'group'
            ? {
                ...mark,
                marks: mark.marks.filter(
                  (inner) => inner.kind !== 'image' || inner.source.endsWith('.jpg'),
                ),
              }
            : mark,
        ),
      },
    }));
    const twin = await write(
      { ...sampleDocument, pages },
      { ...sampleOptions, attachments: [], conformance: 'PDF/A-1b' },
    );
    writeFileSync(join(folder, 'twin.pdf'), twin);
  });
});
