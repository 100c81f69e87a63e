/** A value of a JSON file, as it was read. */
export type Json =
  null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** A JSON object; its keys are asked for by `keyOf`. */
export type JsonObject = Readonly<Record<string, Json>>;

/** True for a JSON object; lists and null are none. */
export function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What an object has under a key of its own; undefined where it has none, or is no object. */
export function keyOf(value: Json | undefined, key: string): Json | undefined {
  return isObject(value) && Object.hasOwn(value, key) ? value[key] : undefined;
}

/** The text under a key; undefined for all else. */
export function textOf(value: Json | undefined, key: string): string | undefined {
  const found = keyOf(value, key);
  return typeof found === 'string' ? found : undefined;
}

/** The items of a list; none for what is no list. */
export function itemsOf(value: Json | undefined): readonly Json[] {
  return Array.isArray(value) ? (value as readonly Json[]) : [];
}

/** Reads bytes as JSON in UTF-8, or says why they are none. */
export function readJson(
  bytes: Uint8Array,
): { readonly value: Json } | { readonly problem: string } {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { value: JSON.parse(text) as Json };
  } catch (failure) {
    return { problem: failure instanceof SyntaxError ? failure.message : 'not UTF-8' };
  }
}
