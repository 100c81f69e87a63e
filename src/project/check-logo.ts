import type { ProjectDefinition } from './definitions.ts';
import type { Reading } from './reading.ts';
import type { Placed } from './shape/shape.ts';

const png = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const jpeg = [0xff, 0xd8, 0xff];

/** The logo must be one of the folder's pictures, a PNG or a JPEG by its first bytes. */
export function checkLogo(
  logo: {
    readonly definition: ProjectDefinition;
    readonly images: Readonly<Record<string, Uint8Array>>;
    readonly written: Placed<string> | undefined;
  },
  reading: Reading,
): void {
  const path = logo.definition.logo;
  if (path === undefined || logo.written === undefined) return;
  const { span } = logo.written;
  const bytes = logo.images[path];
  if (bytes === undefined) {
    const known = Object.keys(logo.images);
    reading.report({
      code: 'file-missing',
      message: `the folder holds no picture ${path}`,
      span,
      hints: [
        known.length === 0
          ? 'put the picture into images/'
          : `pictures here: ${known.join(', ')}`,
      ],
    });
  } else if (!beginsWith(bytes, png) && !beginsWith(bytes, jpeg))
    reading.report({
      code: 'not-a-picture',
      message: `${path} is no PNG or JPEG picture`,
      span,
      hints: ['save the logo as PNG or JPEG'],
    });
}

const beginsWith = (bytes: Uint8Array, head: readonly number[]): boolean =>
  head.every((byte, index) => bytes[index] === byte);
