import type { RememberedFile } from '../world/index.ts';
import type { Attachment } from './attachments.ts';

/** Media types by the ends of names; anything else is bytes. */
const mediaTypes: ReadonlyMap<string, string> = new Map([
  ['yaml', 'application/yaml'],
  ['hbs', 'text/plain'],
  ['png', 'image/png'],
  ['jpg', 'image/jpeg'],
  ['jpeg', 'image/jpeg'],
]);

/** What a file of a folder is, by the folder inside it that holds it. */
const descriptions: ReadonlyMap<string, string> = new Map([
  ['images', 'Picture, as it was read'],
  ['report-templates', 'Template of the project’s own, as it was read'],
  ['worked', 'Steps worked by hand, as they were read'],
]);

/** The files that travel inside a package: all that it was made from, to the byte, and every figure of it. */
export function packageAttachments(
  sources: readonly RememberedFile[],
  results: string,
): readonly Attachment[] {
  return [
    ...sources.map(({ path, bytes }) => ({
      name: path,
      bytes,
      mime: mediaTypeOf(path),
      description:
        descriptions.get(path.split('/')[0] ?? '') ?? 'Definition file, as it was read',
      relationship: 'Source' as const,
    })),
    {
      name: 'results.json',
      bytes: new TextEncoder().encode(results),
      mime: 'application/json',
      description: 'Every figure of the package, at full precision',
      relationship: 'Data' as const,
    },
  ];
}

function mediaTypeOf(path: string): string {
  const end = /\.(\w+)$/u.exec(path)?.[1]?.toLowerCase() ?? '';
  return mediaTypes.get(end) ?? 'application/octet-stream';
}
