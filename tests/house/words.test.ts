import { describe, expect, test } from 'vitest';
import { filesBelow, readText, topFiles } from './repository.ts';

/** Words put together from parts, so that this file does not hold them. */
const anyOf = (...words: readonly (readonly string[])[]): string =>
  words.map((parts) => parts.join('')).join('|');

/** What must not stand in any text of the repository. */
const forbidden: Readonly<Record<string, RegExp>> = {
  'paths of one machine': new RegExp(
    anyOf(['/wo', 'rk/'], ['/ho', 'me/'], ['/Us', 'ers/'], ['\\\\Us', 'ers\\\\']),
  ),
  'promises to do something later': new RegExp(
    `\\b(${anyOf(['TO', 'DO'], ['FIX', 'ME'], ['X', 'XX'], ['HA', 'CK'])})\\b`,
  ),
  'tests that are left out or run alone': new RegExp(
    `\\b(test|describe|it)\\.(${anyOf(['on', 'ly'], ['sk', 'ip'])})\\(`,
  ),
  'checks that are switched off without a reason': new RegExp(
    `@ts-(${anyOf(['ig', 'nore'], ['no', 'check'])})|${anyOf(['eslint-dis', 'able'])}(?!.* -- )`,
  ),
};

const folders = ['src', 'tests', 'report-templates', 'demo-projects', '.config', '.ci'];
const texts = [...folders.flatMap(filesBelow), ...topFiles()].filter(
  (path) =>
    /\.(ts|js|cjs|mjs|json|md|hbs|yaml|txt)$|^\.ci\//.test(path) &&
    path !== 'package-lock.json',
);

describe('no text of the repository holds', () => {
  test.each(Object.entries(forbidden))('%s', (_, pattern) => {
    const found = texts.flatMap((path) =>
      readText(path)
        .split('\n')
        .flatMap((line, index) =>
          pattern.test(line) ? [`${path}:${index + 1}: ${line.trim()}`] : [],
        ),
    );
    expect(found).toEqual([]);
  });
});
