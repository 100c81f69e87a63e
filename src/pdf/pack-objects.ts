import { joinBytes, latin1 } from './output.ts';
import type { PdfReference, PdfkitDocument } from './pdfkit-internals.ts';

const mostInStream = 100;

/** What packing needs of the document: new numbers, and the objects to be packed. */
export interface PackingTools {
  readonly reserve: PdfkitDocument['ref'];
  readonly deflated: (reference: PdfReference) => PdfReference;
  readonly kept: ReadonlyMap<number, string>;
}

/**
 * Ends a file whose objects are packed: streams of a hundred objects each (ISO 32000-1, 7.5.7), and
 * the cross-reference table as a stream, too (7.5.8). Text that repeats from object to object then
 * deflates as one: a tagged file shrinks to less than half.
 */
export function finishPacked(document: PdfkitDocument, tools: PackingTools): void {
  const { reserve, deflated, kept } = tools;
  const packedIn = new Map<number, readonly [stream: number, index: number]>();
  const objects = [...kept];
  for (let start = 0; start < objects.length; start += mostInStream) {
    const part = objects.slice(start, start + mostInStream);
    const { head, body } = printObjects(part);
    const stream = deflated(
      reserve({ Type: 'ObjStm', N: part.length, First: head.length }),
    );
    stream.end(latin1(head + body));
    for (const [index, [number]] of part.entries())
      packedIn.set(number, [stream.id, index]);
  }
  const table = deflated(reserve({ Type: 'XRef', W: [1, 4, 2] }));
  const offset = document._offset;
  const rows = document._offsets.map((at, index) => {
    const number = index + 1;
    const packed = packedIn.get(number);
    if (packed !== undefined) return printRow(2, packed[0], packed[1]);
    return printRow(1, number === table.id ? offset : Number(at), 0);
  });
  Object.assign(table.data, {
    Size: rows.length + 1,
    Root: document._root,
    Info: document._info,
    ID: [document._id, document._id],
  });
  table.end(joinBytes([printRow(0, 0, 0xffff), ...rows]));
  document._write('startxref');
  document._write(String(offset));
  document._write('%%EOF');
}

/** The numbers and offsets of some objects, and behind them their texts. */
function printObjects(objects: readonly (readonly [number, string])[]): {
  readonly head: string;
  readonly body: string;
} {
  let head = '';
  let body = '';
  for (const [number, text] of objects) {
    head += `${number} ${body.length} `;
    body += `${text}\n`;
  }
  return { head, body };
}

/** One entry of the table: how it is to be read in one byte, then four bytes and two. */
function printRow(kind: 0 | 1 | 2, second: number, third: number): Uint8Array {
  const row = new DataView(new ArrayBuffer(7));
  row.setUint8(0, kind);
  row.setUint32(1, second);
  row.setUint16(5, third);
  return new Uint8Array(row.buffer);
}
