/** A value of type T as it is put together: optional keys may stand with undefined. */
type Draft<T> = {
  readonly [K in keyof T]: object extends Pick<T, K> ? T[K] | undefined : T[K];
};

/** The value without the keys that hold undefined: what is absent is left out, and never stands as nothing. */
export function present<T extends object>(draft: Draft<T>): T {
  const entries = Object.entries(draft).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as T;
}
