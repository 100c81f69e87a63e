import { zlibSync } from 'fflate';

/** A new content of an object: the text between `obj` and `endobj`, or a stream with its dictionary's entries. */
export type NewObject = string | { readonly entries: string; readonly data: string };

/**
 * Changes objects of a PDF as ISO 32000-1, 7.5.6, has it: new ones and a table of them are added at
 * the end, and the old ones stay in the file unused.
 */
export function amendPdf(
  bytes: Uint8Array,
  changes: Readonly<Record<number, NewObject>>,
): Uint8Array {
  const before = Buffer.from(bytes).toString('latin1');
  const start = /startxref\s+(\d+)\s+%%EOF\s*$/u.exec(before)?.[1];
  const trailer =
    /trailer\s*<<([^]*?)>>\s*startxref\s+\d+\s+%%EOF\s*$/u.exec(before)?.[1] ?? '';
  const entries = trailer.replace(/\/Prev \d+/u, '');
  let text = before;
  const offsets: string[] = [];
  for (const [number, change] of Object.entries(changes)) {
    offsets.push(`${number} 1\n${String(text.length).padStart(10, '0')} 00000 n \n`);
    text += `${number} 0 obj\n${contentOf(change)}\nendobj\n`;
  }
  const table = text.length;
  text += `xref\n${offsets.join('')}trailer\n<<${entries}/Prev ${start}>>\nstartxref\n${table}\n%%EOF\n`;
  return Uint8Array.from(Buffer.from(text, 'latin1'));
}

function contentOf(change: NewObject): string {
  if (typeof change === 'string') return change;
  const data = Buffer.from(zlibSync(Buffer.from(change.data, 'latin1'))).toString(
    'latin1',
  );
  return `<<${change.entries} /Filter /FlateDecode /Length ${data.length}>>\nstream\n${data}\nendstream`;
}

/** The texts of a PDF's objects that are no streams, by their numbers. */
export function objectTexts(bytes: Uint8Array): ReadonlyMap<number, string> {
  const text = Buffer.from(bytes).toString('latin1');
  return new Map(
    Array.from(
      text.matchAll(/^(\d+) 0 obj\n((?:(?!endobj|stream\n)[^])*)\nendobj/gmu),
      (match) => [Number(match[1]), match[2] ?? ''] as const,
    ),
  );
}

/** Replaces a pattern in the objects (no streams) that have it. Throws where none has it. */
export function rewriteObjects(
  bytes: Uint8Array,
  pattern: RegExp,
  replacement: string,
): Uint8Array {
  const changed = [...objectTexts(bytes)].flatMap(([number, text]) => {
    const rewritten = text.replace(pattern, replacement);
    return rewritten === text ? [] : [[number, rewritten] as const];
  });
  if (changed.length === 0) throw new Error(`No object has ${pattern.source}.`);
  return amendPdf(bytes, Object.fromEntries(changed));
}
