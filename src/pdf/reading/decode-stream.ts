import { unfilterLines } from '../images/unfilter-lines.ts';
import { inflate } from './inflate.ts';
import type { PdfObject, PdfStream } from './pdf-object.ts';
import { entriesOf, isKind, itemsOf, nameOf, numberOf } from './pdf-object.ts';

/**
 * The bytes of a stream with its filters undone. Flate with or without a PNG predictor is all that
 * the program writes around other data; JPEG data are given as they are. Throws RangeError on any
 * other filter, and where the data are damaged.
 */
export function decodeStream(
  stream: PdfStream,
  resolve: (value: PdfObject) => PdfObject,
): Uint8Array {
  const filters = listed(resolve(stream.entries.get('Filter') ?? null));
  const parameters = listed(resolve(stream.entries.get('DecodeParms') ?? null));
  let bytes = stream.packed;
  for (const [index, filter] of filters.entries()) {
    const name = nameOf(resolve(filter));
    if (name === 'DCTDecode') return bytes;
    if (name !== 'FlateDecode') throw new RangeError(`a stream is packed by ${name}`);
    bytes = unpredict(inflate(bytes), resolve(parameters[index] ?? null), resolve);
  }
  return bytes;
}

const listed = (object: PdfObject): readonly PdfObject[] => {
  if (object === null) return [];
  return isKind(object, 'array') ? itemsOf(object) : [object];
};

/** Undoes a PNG predictor (ISO 32000-1, 7.4.4.4). */
function unpredict(
  bytes: Uint8Array,
  parameters: PdfObject,
  resolve: (value: PdfObject) => PdfObject,
): Uint8Array {
  const value = (key: string, fallback: number): number =>
    numberOf(resolve(entriesOf(parameters).get(key) ?? null)) ?? fallback;
  const predictor = value('Predictor', 1);
  if (predictor === 1) return bytes;
  if (predictor < 10) throw new RangeError(`a stream has the predictor ${predictor}`);
  const bits = value('Colors', 1) * value('BitsPerComponent', 8);
  const perLine = Math.ceil((value('Columns', 1) * bits) / 8);
  const lines = unfilterLines(bytes, perLine, Math.max(1, Math.ceil(bits / 8)));
  if (lines === undefined) throw new RangeError('the lines of a stream are damaged');
  return lines;
}
