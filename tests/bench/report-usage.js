// Loaded before the program: leaves what the process has used in the file that the environment names.
import { writeFileSync } from 'node:fs';

process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const usage = { cpu: (userCPUTime + systemCPUTime) / 1e6, megabytes: maxRSS / 1024 };
  writeFileSync(process.env.BENCH_USAGE, JSON.stringify(usage));
});
