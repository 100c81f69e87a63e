import { expect, test } from 'vitest';
import { eventQueue } from '../../src/cli/event-queue.ts';

test('events wait in order, each kind once, until they are asked for', async () => {
  const queue = eventQueue<string>();
  queue.push('saved');
  queue.push('saved');
  queue.push('ended');
  expect([await queue.next(), await queue.next()]).toEqual(['saved', 'ended']);
});

test('who asks first is answered when an event comes', async () => {
  const queue = eventQueue<string>();
  const next = queue.next();
  queue.push('saved');
  expect(await next).toBe('saved');
});
