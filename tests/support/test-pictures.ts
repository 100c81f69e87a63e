import { zlibSync } from 'fflate';

const fromBase64 = (text: string): Uint8Array =>
  Uint8Array.from(Buffer.from(text, 'base64'));

/** A JPEG of 16 × 12 pixels in colour. */
export const jpeg: Uint8Array = fromBase64(
  '/9j/4AAQSkZJRgABAQEASABIAAD/2wBDABQODxIPDRQSEBIXFRQYHjIhHhwcHj0sLiQySUBMS0dARkVQWnNiUFVtVkVGZIhlbXd7gYKBTmCNl4x9lnN+gXz/2wBDARUXFx4aHjshITt8U0ZTfHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHz/wAARCAAMABADASIAAhEBAxEB/8QAFwAAAwEAAAAAAAAAAAAAAAAAAAEEBv/EACQQAAECBAUFAAAAAAAAAAAAAAECBAADERIFExQ2QRV0dbKz/8QAFAEBAAAAAAAAAAAAAAAAAAAAAP/EABQRAQAAAAAAAAAAAAAAAAAAAAD/2gAMAwEAAhEDEQA/ANSnEWinJbJnpM8GlnMHUWmq02enPrSzmIJW7XHZp9jDO8B48/QQH//Z',
);

/** A JPEG of 8 × 8 pixels in the four colours of print. */
export const cmykJpeg: Uint8Array = fromBase64(
  '/9j/4AAQSkZJRgABAQEASABIAAD/7gAOQWRvYmUAZAAAAAAC/9sAQwAoHB4jHhkoIyEjLSsoMDxkQTw3Nzx7WF1JZJGAmZaPgIyKoLTmw6Cq2q2KjMj/y9ru9f///5vB////+v/m/f/4/9sAQwErLS08NTx2QUF2+KWMpfj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4+Pj4/8AAFAgACAAIBAEiAAIRAQMRAQQiAP/EABUAAQEAAAAAAAAAAAAAAAAAAAAF/8QAGxABAAICAwAAAAAAAAAAAAAAAAEDBBITQVL/xAAUAQEAAAAAAAAAAAAAAAAAAAAA/8QAFBEBAAAAAAAAAAAAAAAAAAAAAP/aAA4EAQACEQMRBAAAPwCKACpGTTNvFFkb+ewH/9k=',
);

/** What a PNG is made of. Lines stand as in the file: a byte for the filter, then the samples. */
export interface PngParts {
  readonly width: number;
  readonly height: number;
  readonly bits: number;
  readonly colourType: 0 | 2 | 3 | 4 | 6;
  readonly lines: readonly (readonly number[])[];
  readonly palette?: readonly number[];
  readonly clear?: readonly number[];
  readonly isInterlaced?: boolean;
}

/** A PNG of its parts; the check sums of its chunks are left zero. */
export function png(parts: PngParts): Uint8Array {
  const { width, height, bits, colourType, palette, clear } = parts;
  const header = [...word(width), ...word(height), bits, colourType, 0, 0];
  const data = zlibSync(Uint8Array.from(parts.lines.flat()));
  const half = data.length >> 1; // readers must join the parts of the data
  return Uint8Array.from([
    ...[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
    ...chunk('IHDR', [...header, parts.isInterlaced === true ? 1 : 0]),
    ...(palette === undefined ? [] : chunk('PLTE', palette)),
    ...(clear === undefined ? [] : chunk('tRNS', clear)),
    ...chunk('IDAT', [...data.subarray(0, half)]),
    ...chunk('IDAT', [...data.subarray(half)]),
    ...chunk('IEND', []),
  ]);
}

function chunk(name: string, content: readonly number[]): readonly number[] {
  const letters = Array.from(name, (letter) => letter.charCodeAt(0));
  return [...word(content.length), ...letters, ...content, 0, 0, 0, 0];
}

const word = (value: number): readonly number[] => [
  (value >>> 24) & 255,
  (value >>> 16) & 255,
  (value >>> 8) & 255,
  value & 255,
];

/** Two by two pixels in colour, the lower right one half clear. */
export const pngWithAlpha: Uint8Array = png({
  width: 2,
  height: 2,
  bits: 8,
  colourType: 6,
  lines: [
    [0, 255, 0, 0, 255, 0, 255, 0, 255],
    [0, 0, 0, 255, 255, 9, 9, 9, 128],
  ],
});
