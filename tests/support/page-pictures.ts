import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';

/** Dots per inch of a golden picture: enough to see that a label moved, small enough to keep. */
const resolution = 45;

/** How far two pictures may differ: letters are smoothed a little otherwise by each version of a reader. */
export const tolerance = { ofColour: 0.25, ofPixels: 0.004 };

/** A page of a PDF as poppler draws it, in greys. */
export function pictureOfPage(pdf: Uint8Array, page: number): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'page-'));
  try {
    const file = join(folder, 'package.pdf');
    writeFileSync(file, pdf);
    const stem = join(folder, 'page');
    const only = ['-f', String(page), '-l', String(page), '-singlefile'];
    execFileSync('pdftoppm', [
      '-r',
      String(resolution),
      '-gray',
      '-png',
      ...only,
      file,
      stem,
    ]);
    return readFileSync(`${stem}.png`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Whether golden pictures are to be drawn again rather than compared: `PICTURES=renew`. */
export const isRenewing: boolean = process.env.PICTURES === 'renew';

/**
 * The share of pixels in which a picture differs from the one kept in a file; 1 where none is
 * kept or the sizes differ. When renewing, the picture is written and differs by nothing.
 */
export function differenceFromKept(picture: Buffer, file: string): number {
  if (isRenewing) {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, picture);
    return 0;
  }
  if (!existsSync(file)) return 1;
  const found = PNG.sync.read(picture);
  const kept = PNG.sync.read(readFileSync(file));
  const { width, height } = kept;
  if (found.width !== width || found.height !== height) return 1;
  const unlike = pixelmatch(found.data, kept.data, undefined, width, height, {
    threshold: tolerance.ofColour,
  });
  return unlike / (width * height);
}
