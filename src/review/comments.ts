import type { WorkedDefinition } from '../project/index.ts';
import type { Comment, MarkedStep } from './marked.ts';

/**
 * The register of a file: a comment for every step that is not right, and for every step that
 * somebody replied to. A reply counts only while the line that it quotes stands as it was; only a
 * closing by a named person closes.
 */
export function commentsOn(
  file: WorkedDefinition,
  steps: readonly MarkedStep[],
): readonly Comment[] {
  const concerned = steps.filter(
    ({ step, verdict }) =>
      verdict === 'wrong' ||
      verdict === 'unread' ||
      file.replies.some((reply) => reply.step === step),
  );
  return concerned.map((step, index) => commentOn(file, step, index + 1));
}

function commentOn(file: WorkedDefinition, step: MarkedStep, number: number): Comment {
  const own = file.replies.filter((reply) => reply.step === step.step);
  const quoted = own.filter(({ line }) => line.trim() === (step.written ?? '').trim());
  const isRight = step.verdict === 'right' || step.verdict === 'follows';
  const answer = [...own].reverse().find(({ reply }) => reply !== undefined);
  const closing = [...quoted].reverse().find(({ closes }) => closes);
  const isAnswered = quoted.some(({ reply }) => reply !== undefined);
  const status =
    closing !== undefined
      ? 'closed'
      : isRight
        ? 'reworked'
        : isAnswered
          ? 'answered'
          : 'open';
  return {
    number,
    step: step.step,
    comment: step.findings.map(({ message }) => message).join(' '),
    ...(answer?.reply === undefined
      ? {}
      : { reply: { text: answer.reply, by: answer.by, date: answer.date } }),
    ...(closing === undefined
      ? {}
      : { closed: { by: closing.by, date: closing.date } }),
    status,
  };
}
