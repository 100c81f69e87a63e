import type { BeamTrain } from '../../definitions.ts';
import type { Reading } from '../../reading.ts';
import { present } from '../../shape/present.ts';
import { theCase } from './cases.ts';
import { readUses, type LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';

type AxlesLine = Extract<LoadLine, { kind: 'axles' }>;

/** More spacings than this may not vary: the places to try grow threefold with each. */
const mostVariable = 4;

/** The train of one line; none where the line is at fault, which is then reported. */
export function readAxlesLine(
  line: AxlesLine,
  context: LoadContext,
): readonly BeamTrain[] {
  const { premises, reading } = context;
  const mark = theCase(line.case, line.lineSpan, premises, reading);
  const uses = readUses(line.uses, premises, reading);
  const fits = checkSpacings(line, reading);
  const factors = readTrainFactors(line, reading);
  if (mark === undefined || !fits || factors === 'faulty') return [];
  if (line.relieving.origin === 'default' && line.axles.value.length > 1)
    reading.report({
      code: 'relieving-kept',
      severity: 'remark',
      message:
        'axles that reduce the effect sought are kept, since nothing else is said',
      span: line.lineSpan,
      hints: ['say `relieving: kept` or `relieving: left out`'],
    });
  return [
    present<BeamTrain>({
      id: context.nextId(),
      case: mark,
      axles: line.axles.value,
      spacings: line.spacing?.value ?? [],
      travel: line.travel,
      lane: line.lane,
      factors,
      relieving: line.relieving,
      note: line.note,
      uses,
      span: line.lineSpan,
    }),
  ];
}

function checkSpacings(
  { axles, spacing, lineSpan }: AxlesLine,
  reading: Reading,
): boolean {
  const [wanted, given] = [axles.value.length - 1, spacing?.value.length ?? 0];
  if (given !== wanted) {
    reading.report({
      code: 'spacing-count',
      message: `${counted(axles.value.length, 'axle')} and ${counted(given, 'spacing')}: there is one spacing fewer than axles`,
      span: spacing?.span ?? lineSpan,
      hints: [
        wanted === 0 ? 'take `spacing` out' : `give ${counted(wanted, 'spacing')}`,
      ],
    });
    return false;
  }
  const variable = (spacing?.value ?? []).filter(
    ({ least, greatest }) => greatest.si > least.si,
  );
  if (variable.length <= mostVariable) return true;
  reading.report({
    code: 'too-many-variable-spacings',
    message: `${variable.length} spacings vary; ${mostVariable} may`,
    span: spacing?.span ?? lineSpan,
    hints: ['fix some of them, one line for each train that follows'],
  });
  return false;
}

function readTrainFactors(
  { times, because, lane }: AxlesLine,
  reading: Reading,
): BeamTrain['factors'] | 'faulty' {
  if (times === undefined) {
    if (because === undefined) return undefined;
    reading.report({
      code: 'reason-without-factor',
      message: '`because` gives the reason for a factor, and there is none',
      span: because.span,
      hints: ['add `times`, or write the remark as `note`'],
    });
    return 'faulty';
  }
  if (because === undefined) {
    reading.report({
      code: 'factor-without-reason',
      message: 'a factor on a load needs its reason',
      span: times.span,
      hints: ['add `because`, with the clause or the ground for it'],
    });
    return 'faulty';
  }
  const { axles, lane: onLane } = times.value;
  if (onLane !== undefined && axles === undefined && lane === undefined) {
    reading.report({
      code: 'factor-for-absent-lane',
      message: 'there is no lane load that this factor could act on',
      span: times.span,
      hints: ['add `lane`, or take the factor out'],
    });
    return 'faulty';
  }
  return present<NonNullable<BeamTrain['factors']>>({
    axles,
    lane: lane === undefined ? undefined : onLane,
    because: because.value,
  });
}

function counted(count: number, what: string): string {
  return `${count === 0 ? 'no' : count} ${what}${count === 1 ? '' : 's'}`;
}
