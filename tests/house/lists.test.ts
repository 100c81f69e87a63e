import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { codes } from '../../src/diagnostics/index.ts';
import { templateNames } from '../../src/report/template-names.ts';
import { filesBelow, readText, root } from './repository.ts';

describe('templates', () => {
  const files = readdirSync(new URL('report-templates/', root));

  test('each has its name in the list, and each name its file', () => {
    expect(files.toSorted()).toEqual(
      templateNames.map((name) => `${name}.hbs`).toSorted(),
    );
  });

  test('every kind of step has one', () => {
    const kinds = [
      ...readText('src/derivation/steps.ts').matchAll(/readonly kind: '([\w-]+)'/g),
    ].map(([, kind]) => kind ?? '');
    // Kinds of facts within a step stand in the same file.
    const within = [
      'area',
      'self-weight',
      'carried',
      'force',
      'uniform',
      'varying',
      'couple',
    ];
    const steps = new Set(kinds.filter((kind) => !within.includes(kind)));
    expect(
      [...steps].filter((kind) => !templateNames.includes(`step-${kind}`)),
    ).toEqual([]);
  });
});

describe('codes of diagnostics', () => {
  /** Codes that no faulty folder can bring about, each with the reason and the test that does. */
  const elsewhere: Readonly<Record<string, string>> = {
    'not-a-folder': 'there is no folder: tests/cli/commands/bind.test.ts',
    'file-too-large': 'too large for a repository: tests/mistakes/mistakes.test.ts',
    'file-unreadable':
      'permissions do not survive a checkout: tests/mistakes/mistakes.test.ts',
    'write-failed':
      'depends on the disk, not on the folder: tests/cli/output-files.test.ts',
    'check-failed':
      'no input is known to cause it: tests/derivation/derive-members.test.ts',
    'needs-stiffness': 'found by solving: tests/derivation/unsolved-words.test.ts',
    unstable: 'found by solving: tests/cli/member-lines.test.ts',
    'template-fault': 'found by composing: tests/pipeline.test.ts',
    'worked-left-out': 'found by composing: tests/report/check-prints.test.ts',
    'bag-unreadable': 'needs a bag, not a folder: tests/bag/open-bag.test.ts',
    'not-a-bag': 'needs a file that is none: tests/bag/open-bag.test.ts',
    'bag-refused': 'needs a hostile bag: tests/bag/hostile.test.ts',
    'changes-unknown':
      'found by binding: tests/report/revision/open-superseded.test.ts',
    'archive-exists': 'found by archiving: tests/archive/archive-project.test.ts',
    'archived-as-is': 'found by archiving: tests/archive/archive-project.test.ts',
    'name-not-kept': 'found by archiving: tests/archive/archive-project.test.ts',
    'revision-incomplete': 'found by archiving: tests/archive/archive-project.test.ts',
    'signed-not-compared': 'found by archiving: tests/archive/archive-project.test.ts',
    'signed-adds-nothing': 'found by archiving: tests/archive/signed-copy.test.ts',
    'signed-unreadable': 'found by archiving: tests/archive/archive-project.test.ts',
    'superseded-not-said': 'found by archiving: tests/archive/superseded.test.ts',
    'not-a-package':
      'needs something else than a folder: tests/archive/open-package.test.ts',
    'not-registered': 'found by registering: tests/archive/register/register.test.ts',
    'package-unreadable': 'needs a damaged PDF: tests/archive/open-package.test.ts',
    'package-without-inputs':
      'needs a bag without inputs: tests/archive/open-package.test.ts',
    'date-left-over': 'found by composing: tests/report/revision/own-date.test.ts',
    'set-otherwise': 'found by laying out: tests/cli/commands/bind.test.ts',
  };

  const told = filesBelow('tests/mistakes')
    .filter((file) => file.endsWith('/expected.txt'))
    .map(readText)
    .join('\n');

  test('each is told by a faulty folder, or has a reason and a test elsewhere', () => {
    const untold = Object.keys(codes).filter(
      (code) => !new RegExp(`^(error|remark) ${code}\\b`, 'm').test(told),
    );
    expect(untold.toSorted()).toEqual(Object.keys(elsewhere).toSorted());
  });

  test('the tests elsewhere are there and name the code', () => {
    for (const [code, reason] of Object.entries(elsewhere)) {
      const path = reason.split(': ')[1] ?? '';
      expect(readText(path), reason).toContain(code);
    }
  });
});
