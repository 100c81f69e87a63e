import type {
  CheckChange,
  ComparedFigure,
  ComparedPackage,
  Comparison,
  InputChange,
  OutcomeChange,
  Reach,
  ResultChange,
} from './comparison.ts';

/** A comparison as JSON, format 1: equal comparisons give equal texts, keys in this order. */
export function comparisonJson(comparison: Comparison): string {
  const { earlier, later, inputs, outcomes, checks, results, reach } = comparison;
  const written = {
    format: 1,
    earlier: packageJson(earlier),
    later: packageJson(later),
    inputs: inputs.map(inputJson),
    outcomes: outcomes.map(outcomeJson),
    checks: checks.map(checkJson),
    results: results.map(resultJson),
    reach: reach.map(reachJson),
  };
  return `${JSON.stringify(written, undefined, 2)}\n`;
}

// JSON leaves out what is undefined, so every list of keys below is whole and in its order.
type Json = Readonly<Record<string, unknown>>;

const packageJson = ({ number, title, revision }: ComparedPackage): Json => ({
  number,
  title,
  revision,
});

const inputJson = ({ kind, part, member, what, from, to }: InputChange): Json => ({
  kind,
  part,
  member,
  what,
  from,
  to,
});

const outcomeJson = ({ kind, member, why }: OutcomeChange): Json => ({
  kind,
  member,
  why,
});

const checkJson = ({ kind, member, what, before, after }: CheckChange): Json => ({
  kind,
  member,
  what,
  before: before && { ratio: before.ratio, passes: before.passes },
  after: after && { ratio: after.ratio, passes: after.passes },
});

const resultJson = ({ member, what, before, after, share }: ResultChange): Json => ({
  member,
  what,
  before: before && figureJson(before),
  after: after && figureJson(after),
  share,
});

const figureJson = ({ value, unit, entry, at }: ComparedFigure): Json => ({
  value,
  unit,
  entry,
  at: at && { value: at.value, unit: at.unit },
});

const reachJson = ({ member, by, from }: Reach): Json => ({ member, by, from });
