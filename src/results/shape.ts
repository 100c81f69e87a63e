/** What a JSON value must look like. */
export type Shape =
  | { readonly kind: 'number'; readonly whole?: boolean }
  | { readonly kind: 'boolean' }
  /** A text, of any content or one of a few. */
  | { readonly kind: 'text'; readonly among?: readonly string[] }
  | { readonly kind: 'exactly'; readonly value: number | null }
  | { readonly kind: 'list'; readonly of: Shape }
  /** Any keys, every value of one shape. */
  | { readonly kind: 'record'; readonly of: Shape }
  /** Known keys; further keys are passed over, as a later version may write more. */
  | {
      readonly kind: 'object';
      readonly required: Readonly<Record<string, Shape>>;
      readonly optional?: Readonly<Record<string, Shape>>;
    }
  /** Its shape depends on a look at the value. */
  | {
      readonly kind: 'either';
      /** The shape that a value of this kind must have. */
      readonly choose: (value: unknown) => Shape;
    };

/** A place where a value is not of the shape asked for. */
export interface Misfit {
  /** Keys from the top: `members[0].results.L.shear`. */
  readonly path: string;
  /** What should stand there, to follow "should be": `a number`. */
  readonly expected: string;
}

/** Every place where a JSON value departs from a shape, from top to bottom; none where it fits. */
export function misfitsOf(
  value: unknown,
  shape: Shape,
  path: string = '',
): readonly Misfit[] {
  switch (shape.kind) {
    case 'either':
      return misfitsOf(value, shape.choose(value), path);
    case 'list':
    case 'record':
    case 'object':
      return misfitsWithin(value, shape, path);
    case 'number':
    case 'boolean':
    case 'text':
    case 'exactly':
      return fitsPlainly(value, shape) ? [] : [{ path, expected: wordsFor(shape) }];
  }
}

type PlainShape = Extract<Shape, { kind: 'number' | 'boolean' | 'text' | 'exactly' }>;

function fitsPlainly(value: unknown, shape: PlainShape): boolean {
  switch (shape.kind) {
    case 'number':
      return shape.whole === true ? Number.isInteger(value) : Number.isFinite(value);
    case 'boolean':
      return typeof value === 'boolean';
    case 'text':
      return typeof value === 'string' && (shape.among?.includes(value) ?? true);
    case 'exactly':
      return value === shape.value;
  }
}

function wordsFor(shape: PlainShape): string {
  switch (shape.kind) {
    case 'number':
      return shape.whole === true ? 'a whole number' : 'a number';
    case 'boolean':
      return 'true or false';
    case 'text':
      return shape.among?.map((text) => `"${text}"`).join(' or ') ?? 'a text';
    case 'exactly':
      return `${shape.value}`;
  }
}

function misfitsWithin(
  value: unknown,
  shape: Extract<Shape, { kind: 'list' | 'record' | 'object' }>,
  path: string,
): readonly Misfit[] {
  if (shape.kind === 'list') {
    if (!Array.isArray(value)) return [{ path, expected: 'a list' }];
    return value.flatMap((item: unknown, index) =>
      misfitsOf(item, shape.of, `${path}[${index}]`),
    );
  }
  if (!isObject(value)) return [{ path, expected: 'an object' }];
  if (shape.kind === 'record') {
    return Object.entries(value).flatMap(([key, item]) =>
      misfitsOf(item, shape.of, below(path, key)),
    );
  }
  const present = Object.entries(shape.optional ?? {}).filter(([key]) => key in value);
  return [...Object.entries(shape.required), ...present].flatMap(([key, item]) =>
    misfitsOf(value[key], item, below(path, key)),
  );
}

function below(path: string, key: string): string {
  if (!/^\w+$/.test(key)) return `${path}["${key}"]`;
  return path === '' ? key : `${path}.${key}`;
}

/** True for a JSON object; lists and null are none. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
