import { pathWithin } from '../folder/path-within.ts';
import type { Reading } from '../reading.ts';
import type { Placed } from '../shape/shape.ts';
import { listed } from '../shape/listed.ts';

const png = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const jpeg = [0xff, 0xd8, 0xff];

/** The logo must be one of the folder's pictures, a PNG or a JPEG by its first bytes. */
export function checkLogo(
  logo: Placed<string> | undefined,
  images: Readonly<Record<string, Uint8Array>>,
  reading: Reading,
): void {
  if (logo === undefined) return;
  const { value, span } = logo;
  const path = pathWithin(value);
  if (path === undefined) {
    reading.report({
      code: 'path-outside-folder',
      message: `the path ${value} leads out of the project folder`,
      span,
      hints: ['put the picture into images/ and name it from the project folder on'],
    });
    return;
  }
  const bytes = images[path];
  if (bytes === undefined) {
    const known = Object.keys(images);
    reading.report({
      code: 'file-missing',
      message: `images/ holds no picture ${path}`,
      span,
      hints: [
        known.length === 0
          ? 'put the picture into images/'
          : `pictures here: ${listed(known)}`,
      ],
    });
    return;
  }
  if (beginsWith(bytes, png) || beginsWith(bytes, jpeg)) return;
  reading.report({
    code: 'not-a-picture',
    message: `${path} is no PNG or JPEG picture`,
    span,
    hints: ['save the logo as PNG or JPEG'],
  });
}

const beginsWith = (bytes: Uint8Array, head: readonly number[]): boolean =>
  head.every((byte, index) => bytes[index] === byte);
