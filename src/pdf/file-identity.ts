import { md5 } from './md5.ts';

/** How a file and its document are told from others. */
export interface FileIdentity {
  /** The file identifier of the trailer (ISO 32000-1, 14.4): 16 bytes. */
  readonly id: Uint8Array;
  /** The document and this state of it, as XMP names them. */
  readonly documentId: string;
  readonly instanceId: string;
}

/**
 * Identities made from a text that stands for everything that went into the file (a digest of the
 * inputs and the program's version). The same text gives the same identities.
 */
export function identifyFile(inputs: string): FileIdentity {
  return {
    id: digestText(`file ${inputs}`),
    documentId: uuid(digestText(`document ${inputs}`)),
    instanceId: uuid(digestText(`instance ${inputs}`)),
  };
}

const digestText = (text: string): Uint8Array => md5(new TextEncoder().encode(text));

/** A name-based UUID, version 3 (RFC 9562, 5.3), of an MD5 digest. */
function uuid(digest: Uint8Array): string {
  const marked = digest.map((byte, index) => {
    if (index === 6) return (byte & 0x0f) | 0x30;
    return index === 8 ? (byte & 0x3f) | 0x80 : byte;
  });
  const hex = Array.from(marked, (byte) => byte.toString(16).padStart(2, '0')).join('');
  const parts = [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
  ];
  return `uuid:${[...parts, hex.slice(20)].join('-')}`;
}
