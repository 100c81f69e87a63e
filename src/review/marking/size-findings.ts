import type { Display } from '../../units/index.ts';
import type { Slip } from '../matching/slips.ts';
import type { Finding } from '../verdict.ts';
import { placeWords, words } from './phrases.ts';
import { aboutWords, capital, namesOf, type Speech } from './speech.ts';
import type { Conclusion } from './worker.ts';

/** A wrong size in words: of a load, a resultant, a value carried from an earlier step, or a lump of several. */
export function sizeFinding(slip: Slip, speech: Speech): Finding {
  const own = concludedOf(slip, speech);
  if (own !== undefined)
    return { kind: 'carried', message: carriedWords(slip, speech, own) };
  if (slip.kind === 'resultant')
    return { kind: 'resultant', message: areaWords(slip, speech) };
  return { kind: 'magnitude', message: sizeWords(slip, speech) };
}

/** Too few figures in words. */
export function roundingFinding(slip: Slip, speech: Speech): Finding {
  const { taken = 0, belongs = 0 } = slip;
  const show = shownAs(slip, speech);
  const own = concludedOf(slip, speech);
  const of =
    own === undefined
      ? show(belongs)
      : `${show(belongs)}, concluded in step ${own.step},`;
  return {
    kind: 'rounding',
    message: `${capital(show(taken))} is ${of} rounded to two figures; steps that go on from it may leave the tolerance.`,
  };
}

function shownAs(
  { measure = 'force' }: Slip,
  { context }: Speech,
): (si: number) => string {
  const displays = { arm: 'length', force: 'force', moment: 'moment', share: 'pure' };
  return (si) => words(context, displays[measure] as Display, si);
}

/** What the worker concluded of the only unknown that a slip is about. */
function concludedOf({ atoms }: Slip, { concluded }: Speech): Conclusion | undefined {
  const [atom, ...others] = atoms;
  return atom?.key === undefined || others.length > 0
    ? undefined
    : concluded.get(atom.key);
}

function carriedWords(slip: Slip, speech: Speech, own: Conclusion): string {
  const [atom] = slip.atoms;
  const show = shownAs(slip, speech);
  const { taken = 0, belongs = 0, measure } = slip;
  const what = atom?.quantity === 'couple' ? 'moment' : 'force';
  const concluded = words(speech.context, what, own.value);
  const name = namesOf(slip, speech);
  return measure === 'moment' && what === 'force'
    ? `Step ${own.step} concluded ${concluded} for ${name}, which gives ${show(belongs)} about ${aboutWords(speech.claim)}; here it is ${show(taken)}.`
    : `Step ${own.step} concluded ${concluded} for ${name}; here it is ${show(taken)}.`;
}

function areaWords(slip: Slip, { context }: Speech): string {
  const [atom] = slip.atoms;
  const { taken = 0, belongs = 0 } = slip;
  const resultant = atom?.what.kind === 'load' ? atom.what.resultant : undefined;
  const shape = resultant?.shape ?? 'load';
  const stretch =
    resultant === undefined
      ? ''
      : ` from ${placeWords(context, resultant.from)} to ${placeWords(context, resultant.to)}`;
  const area =
    shape === 'triangle' ? 'its area, half of base times height' : 'its area';
  return `The resultant of the ${shape}${stretch} is ${area}: ${words(context, 'force', belongs)}, not ${words(context, 'force', taken)}.`;
}

function sizeWords(slip: Slip, speech: Speech): string {
  const { claim } = speech;
  const { atoms, measure, taken = 0, belongs = 0 } = slip;
  const [atom, ...others] = atoms;
  const show = shownAs(slip, speech);
  const name = namesOf(slip, speech);
  if (measure === 'share')
    return `${capital(name)} counts in this sum with ${show(belongs)} of it, not with ${show(taken)}.`;
  if (others.length > 0)
    return `${capital(name)} come to ${show(belongs)} together, not to ${show(taken)}.`;
  if (measure === 'moment' && atom?.quantity === 'force')
    return `${capital(name)} gives ${show(belongs)} about ${aboutWords(claim)}, not ${show(taken)}.`;
  const isPart =
    atom !== undefined && Math.abs(Math.abs(atom.size) - belongs) > 1e-6 * belongs;
  if (isPart)
    return `Only ${show(belongs)} of ${name} counts in this sum, its part in the right direction; ${show(taken)} is written.`;
  return atom?.key === undefined
    ? `${capital(show(taken))} is written for ${name}.`
    : `${capital(name)} is ${show(belongs)}, not ${show(taken)}.`;
}
