type Schema = Readonly<Record<string, unknown>>;

/**
 * Why a value does not fit a JSON Schema, as paths with the keyword that fails; none where it
 * does. Knows the keywords that the program's own schemas use and throws at any other, so that
 * none is passed over.
 */
export function fitsSchema(
  value: unknown,
  schema: Schema,
  path: string = '$',
): readonly string[] {
  return Object.entries(schema).flatMap(([keyword, wanted]) => {
    const check = keywords[keyword];
    if (check === undefined) throw new Error(`keyword ${keyword} is not known`);
    return check(value, wanted, { schema, path });
  });
}

interface Place {
  readonly schema: Schema;
  readonly path: string;
}
type Check = (value: unknown, wanted: unknown, place: Place) => readonly string[];

const fine: Check = () => [];
const failing = (fits: boolean, keyword: string, { path }: Place): readonly string[] =>
  fits ? [] : [`${path} ${keyword}`];

const keywords: Readonly<Record<string, Check>> = {
  $schema: fine,
  title: fine,
  description: fine,
  default: fine,
  format: (value, wanted, place) =>
    failing(
      wanted !== 'date' || typeof value !== 'string' || /^\d{4}-\d\d-\d\d$/.test(value),
      'format',
      place,
    ),
  type: (value, wanted, place) =>
    failing(
      [wanted].flat().some((one) => isOfType(value, one)),
      'type',
      place,
    ),
  enum: (value, wanted, place) =>
    failing((wanted as unknown[]).includes(value), 'enum', place),
  const: (value, wanted, place) => failing(value === wanted, 'const', place),
  minimum: (value, wanted, place) =>
    failing(typeof value !== 'number' || value >= Number(wanted), 'minimum', place),
  maximum: (value, wanted, place) =>
    failing(typeof value !== 'number' || value <= Number(wanted), 'maximum', place),
  pattern: (value, wanted, place) =>
    failing(
      typeof value !== 'string' || new RegExp(String(wanted), 'u').test(value),
      'pattern',
      place,
    ),
  minItems: (value, wanted, place) =>
    failing(!Array.isArray(value) || value.length >= Number(wanted), 'minItems', place),
  maxItems: (value, wanted, place) =>
    failing(!Array.isArray(value) || value.length <= Number(wanted), 'maxItems', place),
  items: (value, wanted, { path }) =>
    Array.isArray(value)
      ? value.flatMap((item, at) =>
          fitsSchema(item, wanted as Schema, `${path}[${at}]`),
        )
      : [],
  required: (value, wanted, place) =>
    isObject(value)
      ? (wanted as string[]).flatMap((key) =>
          failing(Object.hasOwn(value, key), `required ${key}`, place),
        )
      : [],
  properties: (value, wanted, { path }) =>
    isObject(value)
      ? Object.entries(wanted as Schema).flatMap(([key, schema]) =>
          Object.hasOwn(value, key)
            ? fitsSchema(value[key], schema as Schema, `${path}.${key}`)
            : [],
        )
      : [],
  propertyNames: (value, wanted, { path }) =>
    isObject(value)
      ? Object.keys(value).flatMap((key) =>
          fitsSchema(key, wanted as Schema, `${path} name ${key}`),
        )
      : [],
  additionalProperties: (value, wanted, { schema, path }) => {
    if (!isObject(value)) return [];
    const known = Object.keys((schema.properties as Schema | undefined) ?? {});
    const rest = Object.keys(value).filter((key) => !known.includes(key));
    return wanted === false
      ? rest.map((key) => `${path} additionalProperties ${key}`)
      : rest.flatMap((key) =>
          fitsSchema(value[key], wanted as Schema, `${path}.${key}`),
        );
  },
  anyOf: (value, wanted, place) =>
    failing(
      (wanted as Schema[]).some(
        (one) => fitsSchema(value, one, place.path).length === 0,
      ),
      'anyOf',
      place,
    ),
  not: (value, wanted, place) =>
    failing(fitsSchema(value, wanted as Schema, place.path).length > 0, 'not', place),
};

const isObject = (value: unknown): value is Schema =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function isOfType(value: unknown, type: unknown): boolean {
  if (type === 'array') return Array.isArray(value);
  if (type === 'object') return isObject(value);
  if (type === 'integer') return Number.isInteger(value);
  return typeof value === type;
}
