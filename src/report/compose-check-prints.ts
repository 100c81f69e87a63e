import { hasErrors, type Diagnostic, type Outcome } from '../diagnostics/index.ts';
import type { Part, Report } from './blocks.ts';
import { checkPlans } from './check-plans.ts';
import { checkCoverFacts } from './contexts/check-facts.ts';
import { footOf, stampOf } from './contexts/foot.ts';
import { fillToBlocks } from './fill-to-blocks.ts';
import type { Plan } from './plan.ts';
import type { ReportInput } from './report-input.ts';
import { openTemplates } from './template-set.ts';

/** The check prints and the register of comments as a document of their own, kept beside a package that is past commenting on. */
export function composeCheckPrints(
  input: ReportInput,
  sources: Readonly<Record<string, string>>,
): Outcome<Report> {
  const { definition } = input.project;
  const prints = checkPlans(input);
  const cover: Plan = {
    anchor: 'check-prints',
    title: 'Check prints',
    template: 'check-prints',
    look: 'body',
    facts: checkCoverFacts(input, prints),
    initials: { prepared: '', checked: '' },
  };
  const plans = [cover, ...prints];
  const templates = openTemplates(sources, new Set(plans.map(({ anchor }) => anchor)));
  const diagnostics: Diagnostic[] = [];
  const parts = plans.map(
    ({ anchor, title, look, template, facts, initials }): Part => {
      const filled = fillToBlocks(templates, template, facts);
      if ('diagnostic' in filled) diagnostics.push(filled.diagnostic);
      return {
        anchor,
        title,
        look,
        foot: footOf(definition, title, initials),
        blocks: 'blocks' in filled ? filled.blocks : [],
      };
    },
  );
  if (hasErrors(diagnostics)) return { diagnostics };
  return {
    diagnostics,
    value: {
      title: `${definition.title}: check prints`,
      ...(definition.office === undefined ? {} : { author: definition.office }),
      language: 'en',
      paper: definition.paper.value,
      parts,
      ...stampOf(definition),
    },
  };
}
