import { availableParallelism } from 'node:os';
import type { Call, Command } from '../command.ts';
import { good, ownFault, usersMistake } from '../exit-codes.ts';
import { laneHere, type Lane, type Verified } from '../lane.ts';
import { laneInThread } from '../lane-in-thread.ts';
import { paintFor } from '../paint.ts';
import { startProgress } from '../progress.ts';
import type { Given } from '../read-arguments.ts';
import { runLanes } from '../run-lanes.ts';
import { shardIn, type Shard } from '../shard.ts';
import type { UsageFault } from '../usage-fault.ts';
import { subjectsIn } from '../verification-subjects.ts';
import { verificationLines } from '../verification-lines.ts';
import {
  noneVerified,
  sumLine,
  withVerified,
  type VerificationSum,
} from '../verification-sum.ts';

/** Proves bags and PDFs unchanged and works them again. Writes no file. */
export const verify: Command = {
  name: 'verify',
  takes: 'PATH…',
  summary: 'prove an issued package unchanged, and work it again',
  about: [
    'Takes bags, bound PDFs and folders of bags. Proves that a bag is whole: every file and every checksum, the lists of them byte for byte, the zip around them, and that what travels inside the PDF is what lies beside it. Then it works the calculation again from the archived inputs with this version and compares every figure of results.json, within a share of 1e-9 of the greatest of its unit on the member. Nothing is worked again of what is damaged, and no file is written.',
    'Verdicts: intact; differs (as issued, but this version computes something else, by name and amount); not recomputed (archived as it is, with inputs that cannot be worked); damaged (what); unreadable (no package, or one refused as dangerous). A PDF alone is held against the check sums inside it; it has none of its pages, and that is said.',
    'A folder is searched for bags (.zip) and all cores take part; --jobs sets how many. --shard 3/16 takes the third of sixteen shares: a digest of each path, counted from the folder that is named, decides, so that every bag falls to exactly one share on any machine. Ends with 0 only where all are intact, with 1 otherwise, with 2 where the program itself failed on one; the others are verified all the same.',
  ],
  options: {
    shard: { type: 'string', value: 'K/N', about: 'take the Kth of N shares alone' },
    jobs: { type: 'string', value: 'N', about: 'verify so many at a time' },
    json: { type: 'boolean', about: 'print all that was found for another program' },
    quiet: { type: 'boolean', about: 'say nothing of what is intact' },
  },
  examples: [
    { line: 'sumzero verify shelter/issued/17-A.zip', does: 'prove one bag' },
    { line: 'sumzero verify ~/archive --quiet', does: 'prove all bags of a folder' },
    {
      line: 'sumzero verify /archive --shard 3/16 --json',
      does: 'one job of sixteen, for a job scheduler',
    },
  ],
  run: runVerify,
};

async function runVerify(call: Call): Promise<number | UsageFault> {
  const { given, world, streams } = call;
  const share = shardIn(given);
  if ('fault' in share) return share.fault;
  const jobs = jobsIn(given);
  if ('fault' in jobs) return jobs.fault;
  const subjects = await subjectsIn(world, given.positionals, share.shard);
  if ('fault' in subjects) return subjects.fault;
  const { paths, found } = subjects;
  const isJson = given.has('json');
  const isQuiet = given.has('quiet');
  const paint = paintFor(streams.coloured.out);
  const progress = startProgress(streams, isQuiet || found === 1);
  const kept: Verified[] = [];
  let sum = noneVerified;
  await runLanes(paths, lanesFor(call, paths.length, jobs.jobs), {
    onResult: (verified) => {
      sum = withVerified(sum, verified);
      if (isJson) kept.push(verified);
      else if (!(isQuiet && isIntact(verified))) {
        progress.end();
        streams.out(verificationLines(verified, paint, found === 1));
      }
    },
    onProgress: (done) => progress.onWords(`${done} of ${paths.length} verified`),
  });
  progress.end();
  const isGood = sum.intact === paths.length;
  if (isJson) streams.out(asJson(kept, sum, share.shard));
  else if (found > 1 && !(isQuiet && isGood))
    streams.out(sumLine(sum, found, share.shard));
  return sum.failed > 0 ? ownFault : isGood ? good : usersMistake;
}

const isIntact = (verified: Verified): boolean =>
  'verification' in verified && verified.verification.verdict === 'intact';

/** More threads than this no machine of today feeds. */
const mostJobs = 256;

function jobsIn(
  given: Given,
): { readonly jobs: number } | { readonly fault: UsageFault } {
  const text = given.value('jobs');
  if (text === undefined) return { jobs: availableParallelism() };
  const jobs = /^\d{1,3}$/u.test(text) ? Number(text) : 0;
  return jobs >= 1 && jobs <= mostJobs
    ? { jobs }
    : {
        fault: {
          message: `--jobs takes a whole number from 1 to ${mostJobs}, not ${text}`,
          hints: ['leave it out for one a core'],
        },
      };
}

/** One thread a job; for a single bag, or where there is nowhere for threads to begin, this one. */
function lanesFor(call: Call, count: number, jobs: number): readonly Lane[] {
  const { threadEntry, program } = call;
  return threadEntry === undefined || count < 2
    ? [laneHere(call)]
    : Array.from({ length: Math.min(jobs, count) }, () =>
        laneInThread(threadEntry, { program }),
      );
}

function asJson(
  kept: readonly Verified[],
  summary: VerificationSum,
  shard: Shard | undefined,
): string {
  const verifications = kept.flatMap((one) =>
    'verification' in one ? [one.verification] : [],
  );
  const failed = kept.filter((one) => 'failure' in one);
  const all = { format: 1, shard: shard ?? null, verifications, failed, summary };
  return `${JSON.stringify(all, null, 2)}\n`;
}
