import { isClose } from '../matching/closeness.ts';
import type { NameMeaning } from '../names/name-meanings.ts';
import type { Finding } from '../verdict.ts';
import { betweenFindings } from './between-findings.ts';
import type { WrittenConclusion } from './conclude.ts';
import type { Drawn } from './drawn.ts';
import { judgeConclusion } from './judge-conclusion.ts';
import { judgeValue, type Judged } from './judge-value.ts';
import { displayOf, showAs } from './shown-as.ts';
import { keepOwn, meaningOf, nameIt, readOwnConclusion } from './own-symbols.ts';
import type { OwnEquation } from './solve-for.ts';
import { faultWords, type StepRequest } from './step-mark.ts';
import { unfitUnit } from './worded-value.ts';

/** What the conclusions of a step come to together. */
export interface Conclusions {
  readonly standing: 'right' | 'follows' | 'wrong' | 'unread';
  readonly findings: readonly Finding[];
  readonly remarks: readonly string[];
  /** False where an unknown was concluded that the worker's equations do not give. */
  readonly isDetermined: boolean;
}

/** Judges every conclusion of a step, and remembers what the worker found. */
export function markConclusions(
  request: StepRequest,
  texts: readonly string[],
  drawn: Drawn,
): Conclusions {
  const findings: Finding[] = [];
  const remarks: string[] = [];
  let standing: Conclusions['standing'] = 'right';
  let isDetermined = true;
  for (const text of texts) {
    const read = readOwnConclusion(request, text);
    if (read.fault !== undefined) {
      findings.push({
        kind: read.fault.kind,
        term: text,
        message: faultWords(text, read.fault),
      });
      standing = 'unread';
      continue;
    }
    const marked = markOne(request, read.conclusion, drawn);
    const chain = betweenFindings(request, read.conclusion);
    findings.push(...chain, ...marked.findings);
    remarks.push(...marked.remarks);
    standing = worse(standing, chain.length > 0 ? 'wrong' : marked.standing);
    isDetermined &&= marked.isDetermined;
  }
  return { standing, findings, remarks, isDetermined };
}

function markOne(
  request: StepRequest,
  conclusion: WrittenConclusion,
  drawn: Drawn,
): Conclusions {
  const targets = conclusion.symbols.length === 0 ? [undefined] : conclusion.symbols;
  const findings: Finding[] = [];
  const remarks: string[] = [];
  let standing: Conclusions['standing'] = 'right';
  let isDetermined = true;
  for (const symbol of targets) {
    const meaning =
      symbol === undefined ? drawn.target : meaningOf(request, symbol.name, drawn);
    if (meaning === undefined) {
      const defined = definedOtherwise(request, conclusion, drawn);
      findings.push(...defined.findings);
      standing = worse(standing, defined.standing);
      keepOwn(request, symbol?.name, conclusion, drawn);
      continue;
    }
    const judged = judgeConclusion(request, conclusion, {
      meaning,
      sign: symbol?.sign ?? 1,
      drawn: { ...drawn, equations: withEqual(request, conclusion, drawn) },
    });
    nameIt(request, symbol?.name, conclusion, meaning);
    findings.push(
      ...judged.findings.map((finding) => ({ ...finding, term: conclusion.text })),
    );
    if (judged.isMagnitude) remarks.push(magnitudeRemark(meaning));
    standing = worse(standing, judged.standing);
    isDetermined &&= judged.isDetermined;
  }
  return { standing, findings, remarks, isDetermined };
}

/** The worse of two standings. */
function worse(
  one: Conclusions['standing'],
  other: Conclusions['standing'],
): Conclusions['standing'] {
  const order = ['unread', 'wrong', 'follows', 'right'] as const;
  return order.find((standing) => standing === one || standing === other) ?? one;
}

/**
 * `RA = RC = 9 kip` says by itself that the two are one, which goes with the equations where it is
 * true of the member: by symmetry.
 */
function withEqual(
  request: StepRequest,
  { symbols }: WrittenConclusion,
  drawn: Drawn,
): readonly OwnEquation[] {
  const unknowns = symbols.flatMap(({ name, sign }) => {
    const meaning = meaningOf(request, name, drawn);
    if (meaning?.kind !== 'unknown') return [];
    const { key, share, truth } = meaning;
    return [{ key, share: sign * share, truth: sign * truth }];
  });
  const [first, ...others] = unknowns;
  const last = drawn.equations.at(-1);
  if (first === undefined || last === undefined) return drawn.equations;
  const equal = others
    .filter(({ truth }) => isClose(truth, first.truth))
    .map(({ key, share }): OwnEquation => ({
      constant: 0,
      shares: new Map([
        [first.key, first.share],
        [key, -share],
      ]),
    }));
  // The step's own equation stays the last one.
  return [...drawn.equations.slice(0, -1), ...equal, last];
}

/** What is said of a symbol of the worker's own beside what its line comes to. */
function definedOtherwise(
  request: StepRequest,
  conclusion: WrittenConclusion,
  { comesTo }: Pick<Drawn, 'comesTo'>,
): Pick<Judged, 'standing' | 'findings'> {
  if (comesTo === undefined) return { standing: 'right', findings: [] };
  const { own, truth, dimension } = comesTo;
  const unfit = unfitUnit(conclusion, { dimension });
  if (unfit !== undefined)
    return { standing: 'wrong', findings: [{ ...unfit, term: conclusion.text }] };
  const { standing, findings } = judgeValue(
    conclusion.value,
    {
      truth,
      own,
      unit: conclusion.unit,
      takesMagnitude: false,
      figures: request.context.figures,
    },
    showAs(request, displayOf(comesTo)),
  );
  return {
    standing,
    findings: findings.map((finding) => ({ ...finding, term: conclusion.text })),
  };
}

function magnitudeRemark({ truth, dimension }: NameMeaning): string {
  const isMoment = dimension.force === 1 && dimension.length === 1;
  if (isMoment)
    return truth < 0
      ? 'given as a size; the sense is hogging: tension on top'
      : 'given as a size; the sense is sagging: tension at the bottom';
  return `given as a size; in the signs of the diagrams it is ${truth < 0 ? 'negative' : 'positive'}`;
}
