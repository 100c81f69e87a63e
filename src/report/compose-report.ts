import { hasErrors, type Diagnostic, type Outcome } from '../diagnostics/index.ts';
import type { Block, Part, Report } from './blocks.ts';
import {
  anchorOf,
  assumptionFacts,
  basisFacts,
  cautionFacts,
  derivedOf,
  nameOf,
} from './contexts/package-facts.ts';
import { coverFacts } from './contexts/cover-facts.ts';
import { footOf, stampOf } from './contexts/foot.ts';
import { indexFacts } from './contexts/index-facts.ts';
import { reactionFacts } from './contexts/reaction-facts.ts';
import { revisionFacts } from './contexts/revision-facts.ts';
import { checkPlans } from './check-plans.ts';
import { fillToBlocks } from './fill-to-blocks.ts';
import { numberEquations } from './numbering.ts';
import type { Plan } from './plan.ts';
import type { MemberReport, ReportInput } from './report-input.ts';
import { revisePart, type RevisedPart } from './revision/revise.ts';
import { openTemplates, type TemplateSet } from './template-set.ts';

/**
 * Composes the package: each part is a template filled with facts, its XHTML read as blocks. A
 * template that cannot be read or filled is a diagnostic that names it; the parts' order is fixed
 * here, their words and inner order are the templates'.
 */
export function composeReport(
  input: ReportInput,
  sources: Readonly<Record<string, string>>,
): Outcome<Report> {
  const { definition } = input.project;
  const bodyPlans = bodyPlansOf(input);
  const revisionPlan = hasRevision(input) ? [revisionStub] : [];
  const listed = [...revisionPlan, ...bodyPlans];
  const templates = openTemplates(
    sources,
    new Set(['cover', 'index', ...listed.map(({ anchor }) => anchor)]),
  );
  const diagnostics: Diagnostic[] = [];
  const compose = (plan: Plan): Part => ({
    anchor: plan.anchor,
    title: plan.title,
    look: plan.look,
    foot: footOf(definition, plan.title, plan.initials),
    blocks: blocksFor(plan, fill(templates, plan, diagnostics)),
  });
  const revised = (plan: Plan): RevisedPart => revisePlan(plan, compose(plan), input);
  const cover = compose(coverPlan(input));
  const index = revised(indexPlan(input, listed));
  const body = bodyPlans.map(revised);
  const reached = [index, ...body].filter(({ isReached }) => isReached);
  const parts = [
    cover,
    index.part,
    ...revisionPlan.map((plan) =>
      compose({
        ...plan,
        facts: revisionFacts(
          input,
          reached.map(({ part }) => part),
        ),
      }),
    ),
    ...body.map(({ part }) => part),
  ];
  if (hasErrors(diagnostics)) return { diagnostics };
  const mark = definition.revisions.at(-1)?.mark;
  return {
    diagnostics,
    value: {
      title: `${definition.title}: calculations`,
      ...(definition.office === undefined ? {} : { author: definition.office }),
      language: 'en',
      paper: definition.paper.value,
      parts,
      ...stampOf(definition),
      ...(hasRevision(input) && mark !== undefined ? { changeMark: mark } : {}),
    },
  };
}

/** Steps of a check print have numbers already. */
function blocksFor(plan: Plan, blocks: readonly Block[]): readonly Block[] {
  return plan.template === 'check-print' ? blocks : numberEquations(blocks);
}

function fill(
  templates: TemplateSet,
  plan: Plan,
  diagnostics: Diagnostic[],
): readonly Block[] {
  const filled = fillToBlocks(templates, plan.template, plan.facts);
  if ('blocks' in filled) return filled.blocks;
  // One fault of a shared partial would come up on every member; it is told once.
  if (!diagnostics.some(({ message }) => message === filled.diagnostic.message)) {
    diagnostics.push(filled.diagnostic);
  }
  return [];
}

/** What a part is compared with; the marks of a program on worked steps are no part of the calculations. */
function revisePlan(
  plan: Plan,
  part: Part,
  { revision, project }: ReportInput,
): RevisedPart {
  if (revision === undefined || 'why' in revision || plan.initials !== undefined)
    return { part, isReached: false };
  return revisePart(part, project.definition, revision);
}

const hasRevision = ({ revision }: ReportInput): boolean => revision !== undefined;

/** Its facts are known only when all other parts have been compared. */
const revisionStub: Plan = {
  anchor: 'revision',
  title: 'Revision',
  template: 'revision',
  look: 'body',
  facts: {},
};

function coverPlan(input: ReportInput): Plan {
  return {
    anchor: 'cover',
    title: 'Cover',
    template: 'cover',
    look: 'cover',
    facts: coverFacts(input),
  };
}

function indexPlan(input: ReportInput, listed: readonly Plan[]): Plan {
  return {
    anchor: 'index',
    title: 'Index',
    template: 'index',
    look: 'body',
    facts: indexFacts(
      input,
      listed.filter(({ anchor }) => !anchor.startsWith('member-')),
    ),
  };
}

/** The parts of the package after the index in their order; those that have nothing to say are left out. */
function bodyPlansOf(input: ReportInput): readonly Plan[] {
  const part = (
    anchor: string,
    title: string,
    template: string,
    facts: object,
  ): Plan => ({
    anchor,
    title,
    template,
    facts,
    look: 'body',
  });
  const { project, members, program } = input;
  const derived = derivedOf(members);
  return [
    part('basis', 'Basis of design', 'basis', basisFacts(input)),
    part('assumptions', 'Assumptions', 'assumptions', assumptionFacts(input)),
    part('cautions', 'Cautions', 'cautions', cautionFacts(input)),
    ...members.map(memberPlan),
    ...checkPlans(input),
    part('reactions', 'Table of support reactions', 'reactions', reactionFacts(input)),
    part('echo', 'Input echo', 'echo', {
      files: project.files.map(({ path, text, sha256 }) => ({
        path,
        sha256,
        lines: text.replace(/\n$/, '').split(/\r?\n/),
      })),
    }),
    part('program', 'Program statement', 'program', {
      program,
      closure: derived.map(({ derivation, closure }) => ({
        mark: derivation.mark,
        closure: closure === 0 ? '0' : closure.toExponential(1),
      })),
      memberCount: derived.length,
    }),
  ];
}

function memberPlan(member: MemberReport): Plan {
  if (member.kind === 'failed') {
    return {
      anchor: anchorOf(member.mark),
      title: nameOf(member.mark, member.title),
      template: 'failed-member',
      look: 'body',
      facts: { ...member, anchor: anchorOf(member.mark) },
    };
  }
  const { derivation } = member;
  return {
    anchor: anchorOf(derivation.mark),
    title: nameOf(derivation.mark, derivation.title),
    template: 'member',
    look: 'body',
    facts: {
      ...derivation,
      anchor: anchorOf(derivation.mark),
      sections: derivation.sections.map((section) => ({
        ...section,
        hasCombinations: section.steps.some(
          (step) => step.kind === 'entries' && step.for !== 'cases',
        ),
      })),
    },
  };
}
