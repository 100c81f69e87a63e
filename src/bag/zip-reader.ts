import { fromRandomAccessReaderPromise, RandomAccessReader, type ZipFile } from 'yauzl';
import { readableOf, type OpenFile } from '../world/index.ts';

/**
 * Opens a zip that lies in an open file. Names are left as bytes and judged by us: the reader would
 * stop at the first with words of its own. Throws where there is no zip.
 */
export async function openZip(file: OpenFile): Promise<ZipFile> {
  return fromRandomAccessReaderPromise(new FileReader(file), file.size, {
    autoClose: false,
    decodeStrings: false,
    validateEntrySizes: true,
  });
}

/** What the reader of zips asks for bytes; it wants a class. */
class FileReader extends RandomAccessReader {
  readonly file: OpenFile;

  constructor(file: OpenFile) {
    super();
    this.file = file;
  }

  override _readStreamForRange(
    start: number,
    end: number,
  ): ReturnType<typeof readableOf> {
    return readableOf(this.file, start, end);
  }

  override read(
    ...[buffer, offset, length, position, callback]: Parameters<
      RandomAccessReader['read']
    >
  ): void {
    callback(this.fill(buffer.subarray(offset, offset + length), position));
  }

  fill(space: Buffer, position: number): Error | null {
    try {
      const piece = this.file.readAt(position, space.length);
      space.set(piece);
      return piece.length < space.length ? new Error('unexpected EOF') : null;
    } catch {
      return new Error('the disk failed');
    }
  }
}
