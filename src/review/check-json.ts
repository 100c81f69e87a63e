import type { MarkedFile, MarkedStep } from './marked.ts';

/** What `check --json` prints: format 1, two spaces an indent, a line break at the end. */
export function checkJson(
  files: readonly MarkedFile[],
  lineOf: (file: MarkedFile) => number | undefined,
): string {
  const worked = files.map((file) => ({
    file: file.file,
    ...(file.member === undefined ? {} : { member: file.member }),
    ...(file.prepared === undefined ? {} : { prepared: file.prepared }),
    ...(file.loads === undefined ? {} : { loads: file.loads }),
    steps: file.steps.map(stepJson),
    summary: file.summary,
    ...(file.fault === undefined ? {} : { error: errorJson(file, lineOf(file)) }),
  }));
  return `${JSON.stringify({ format: 1, worked }, null, 2)}\n`;
}

function stepJson(step: MarkedStep): unknown {
  const { findings, remarks, expected, loads } = step;
  return {
    step: step.step,
    line: step.line,
    loads,
    verdict: step.verdict,
    remarks,
    findings,
    ...(expected === undefined ? {} : { expected: expected.text }),
  };
}

function errorJson({ fault, file }: MarkedFile, line: number | undefined): unknown {
  return {
    code: fault?.code,
    message: fault?.message,
    file,
    ...(line === undefined ? {} : { line }),
  };
}
