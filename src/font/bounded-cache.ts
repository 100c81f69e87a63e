/** A memory of answers that never holds more than a given number; the oldest is forgotten first. */
export interface BoundedCache<Value> {
  /** The remembered answer for the key, or the newly made one, which is then remembered. */
  readonly get: (key: string, make: () => Value) => Value;
  /** How many answers are held at present. */
  readonly size: () => number;
}

/**
 * Makes an empty cache. A long package has tens of thousands of different numbers in it, each
 * printed once or twice: without a bound the memory would grow with the document.
 */
export function boundedCache<Value>(capacity: number): BoundedCache<Value> {
  if (capacity < 1) throw new RangeError(`A cache for ${capacity} answers holds none.`);
  const answers = new Map<string, { readonly value: Value }>();
  const get = (key: string, make: () => Value): Value => {
    const known = answers.get(key);
    if (known !== undefined) return known.value;
    const value = make();
    if (answers.size >= capacity) {
      // A Map keeps the order of insertion, so its first key is the oldest.
      for (const oldest of answers.keys()) {
        answers.delete(oldest);
        break;
      }
    }
    answers.set(key, { value });
    return value;
  };
  return { get, size: () => answers.size };
}
