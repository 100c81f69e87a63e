/** Events that wait until somebody asks for the next. */
export interface EventQueue<E> {
  readonly push: (event: E) => void;
  /** The oldest event that waits, or the next that comes. */
  readonly next: () => Promise<E>;
}

/** An empty queue. An event that waits already is not put in again. One may ask at a time. */
export function eventQueue<E>(): EventQueue<E> {
  const waiting: E[] = [];
  let wake: (() => void) | undefined;
  return {
    push: (event) => {
      if (!waiting.includes(event)) waiting.push(event);
      wake?.();
    },
    next: async () => {
      for (;;) {
        const event = waiting.shift();
        if (event !== undefined) return event;
        await new Promise<void>((then) => {
          wake = then;
        });
      }
    },
  };
}
