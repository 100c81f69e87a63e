/** An object of a PDF file as it is read (ISO 32000-1, 7.3). */
export type PdfObject =
  | null
  | boolean
  | number
  | PdfNameObject
  | PdfString
  | PdfArray
  | PdfDictionaryObject
  | PdfStream
  | PdfPointer;

/** A name, its `#xx` undone, without the slash. */
export interface PdfNameObject {
  readonly kind: 'name';
  readonly name: string;
}

/** A string: a text or mere bytes, which only its place in the file tells. */
export interface PdfString {
  readonly kind: 'string';
  readonly bytes: Uint8Array;
}

/** An array. */
export interface PdfArray {
  readonly kind: 'array';
  readonly items: readonly PdfObject[];
}

/** A dictionary. */
export interface PdfDictionaryObject {
  readonly kind: 'dictionary';
  readonly entries: ReadonlyMap<string, PdfObject>;
}

/** A stream: its dictionary and its bytes as they stand in the file, filters not undone. */
export interface PdfStream {
  readonly kind: 'stream';
  readonly entries: ReadonlyMap<string, PdfObject>;
  readonly packed: Uint8Array;
}

/** A reference to an object by its number. */
export interface PdfPointer {
  readonly kind: 'reference';
  readonly number: number;
}

/** The kind of any object, primitives included. */
export function kindOf(
  object: PdfObject,
): Exclude<PdfObject, null | boolean | number>['kind'] | 'null' | 'boolean' | 'number' {
  if (object === null) return 'null';
  if (typeof object === 'boolean') return 'boolean';
  return typeof object === 'number' ? 'number' : object.kind;
}

/** The name that an object is; undefined where it is none. */
export function nameOf(object: PdfObject): string | undefined {
  return isKind(object, 'name') ? object.name : undefined;
}

/** The number that an object is; undefined where it is none. */
export function numberOf(object: PdfObject): number | undefined {
  return typeof object === 'number' ? object : undefined;
}

/** The number that an object is, or a fallback where it is none or missing. */
export function numberOr(object: PdfObject | undefined, fallback: number): number {
  return typeof object === 'number' ? object : fallback;
}

/** The bytes of a string; undefined where the object is none. */
export function bytesOf(object: PdfObject): Uint8Array | undefined {
  return isKind(object, 'string') ? object.bytes : undefined;
}

/** The text of a string (ISO 32000-1, 7.9.2.2); undefined where the object is none. */
export function textOf(object: PdfObject): string | undefined {
  return isKind(object, 'string') ? decodeText(object.bytes) : undefined;
}

/** The items of an array; none where the object is no array. */
export function itemsOf(object: PdfObject): readonly PdfObject[] {
  return isKind(object, 'array') ? object.items : [];
}

/** The number of the object that a reference points to; undefined where the object is none. */
export function pointerOf(object: PdfObject): number | undefined {
  return isKind(object, 'reference') ? object.number : undefined;
}

/** The entries of a dictionary or of a stream's dictionary; none of any other object. */
export function entriesOf(object: PdfObject): ReadonlyMap<string, PdfObject> {
  return isKind(object, 'dictionary') || isKind(object, 'stream')
    ? object.entries
    : noEntries;
}

const noEntries: ReadonlyMap<string, PdfObject> = new Map();

/** True where an object is of a kind. */
export function isKind<
  Kind extends Exclude<PdfObject, null | boolean | number>['kind'],
>(
  object: PdfObject,
  kind: Kind,
): object is Extract<PdfObject, { readonly kind: Kind }> {
  return kindOf(object) === kind;
}

/** UTF-16BE or UTF-8 behind a byte order mark, else one byte a letter. */
export function decodeText(bytes: Uint8Array): string {
  const [first, second, third] = bytes;
  if (first === 0xfe && second === 0xff)
    return new TextDecoder('utf-16be').decode(bytes.subarray(2));
  if (first === 0xef && second === 0xbb && third === 0xbf)
    return new TextDecoder().decode(bytes.subarray(3));
  return Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
}
