import {
  checkAnchorOf,
  checkFacts,
  checkTitleOf,
  stepAnchorOf,
} from './contexts/check-facts.ts';
import { initialsOf } from './contexts/foot.ts';
import { registerFacts } from './contexts/register-facts.ts';
import type { MarkedFile } from '../review/index.ts';
import type { Plan } from './plan.ts';
import type { ReportInput } from './report-input.ts';

/**
 * A check print for each worked file, and one register of all comments; nothing where there are
 * none. The strip at their foot names who worked the steps and leaves the checker open: the
 * package's own checker has not signed for them.
 */
export function checkPlans(input: ReportInput): readonly Plan[] {
  const { worked } = input;
  if (worked.length === 0) return [];
  const prints = worked.map((file): Plan => ({
    anchor: checkAnchorOf(file),
    title: checkTitleOf(file),
    template: 'check-print',
    look: 'body',
    facts: checkFacts(file, input),
    initials: { prepared: initialsOf(file.prepared), checked: '' },
  }));
  const register: Plan = {
    anchor: 'comments',
    title: 'Comment register',
    template: 'register',
    look: 'body',
    facts: { anchor: 'comments', ...registerFacts(input, anchorOf) },
    initials: { prepared: '', checked: '' },
  };
  return [...prints, register];
}

const anchorOf = (file: Pick<MarkedFile, 'file'>, step?: number): string =>
  step === undefined ? checkAnchorOf(file) : stepAnchorOf(file, step);
