/** Advances of the glyphs of a TrueType file, thousandths of an em. */
export interface TrueTypeMetrics {
  /** Undefined for a glyph that the file has not. */
  readonly widthOf: (glyph: number) => number | undefined;
}

/** Reads the tables head, hhea, maxp and hmtx (ISO/IEC 14496-22, 5.2); undefined where one is missing or cut short. */
export function readTrueType(bytes: Uint8Array): TrueTypeMetrics | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = readTables(bytes, view);
  const at = (tag: string, offset: number, length: number): number | undefined => {
    const table = tables.get(tag);
    return table !== undefined && offset + length <= table.length
      ? table.start + offset
      : undefined;
  };
  const word = (tag: string, offset: number): number | undefined => {
    const place = at(tag, offset, 2);
    return place === undefined ? undefined : view.getUint16(place);
  };
  const unitsPerEm = word('head', 18);
  const metricCount = word('hhea', 34);
  const glyphCount = word('maxp', 4);
  if (unitsPerEm === undefined || metricCount === undefined || glyphCount === undefined)
    return undefined;
  if (word('hmtx', 4 * (metricCount - 1)) === undefined) return undefined;
  return {
    widthOf: (glyph) => {
      if (glyph >= glyphCount) return undefined;
      // Glyphs beyond the metrics share the last advance.
      const width = word('hmtx', 4 * Math.min(glyph, metricCount - 1));
      return width === undefined ? undefined : (width * 1000) / unitsPerEm;
    },
  };
}

interface Table {
  readonly start: number;
  readonly length: number;
}

function readTables(bytes: Uint8Array, view: DataView): ReadonlyMap<string, Table> {
  const tables = new Map<string, Table>();
  const count = bytes.length < 12 ? 0 : view.getUint16(4);
  for (let index = 0; index < count && 28 + 16 * index <= bytes.length; index += 1) {
    const record = 12 + 16 * index;
    const tag = String.fromCharCode(...bytes.subarray(record, record + 4));
    const start = view.getUint32(record + 8);
    const length = view.getUint32(record + 12);
    if (start + length <= bytes.length) tables.set(tag, { start, length });
  }
  return tables;
}
