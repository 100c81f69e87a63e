import type { Reading } from '../reading.ts';
import type { ReadFolder } from './read-folder.ts';

/** Remarks on pictures that nothing places: neither the cover, nor a written sheet, nor a template names them. */
export function remarkOnPictures(
  { definition, folder }: ReadFolder,
  reading: Reading,
): void {
  const texts = [...folder.sheets, ...Object.values(folder.templates)];
  for (const path of Object.keys(folder.images)) {
    const name = path.slice(path.lastIndexOf('/') + 1);
    if (path === definition.logo || texts.some((text) => text.includes(name))) continue;
    reading.report({
      code: 'picture-unused',
      severity: 'remark',
      message: `nothing places the picture ${path}`,
      span: { file: reading.file, start: 0, end: 0 },
      hints: ['take it away, or leave it for later sheets'],
    });
  }
}
