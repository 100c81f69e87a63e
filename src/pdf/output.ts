/** Bytes collected as a file is printed. */
export interface Output {
  /** Adds a line of one-byte letters, or bytes as they are, and gives how many bytes that is. */
  readonly add: (data: string | Uint8Array) => number;
  readonly bytes: () => Uint8Array;
}

const longestText = 65_536;

/** An empty output. Lines are gathered before they become bytes: a file has many short ones. */
export function openOutput(): Output {
  const parts: Uint8Array[] = [];
  let text = '';
  const flush = (): void => {
    if (text !== '') parts.push(latin1(text));
    text = '';
  };
  return {
    add: (data) => {
      if (typeof data === 'string') {
        text += `${data}\n`;
        if (text.length > longestText) flush();
        return data.length + 1;
      }
      flush();
      parts.push(data);
      return data.length;
    },
    bytes: () => {
      flush();
      return joinBytes(parts);
    },
  };
}

/** Several runs of bytes as one. */
export function joinBytes(parts: readonly Uint8Array[]): Uint8Array {
  const joined = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    joined.set(part, at);
    at += part.length;
  }
  return joined;
}

/** A text of one-byte letters as bytes. */
export function latin1(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let index = 0; index < text.length; index += 1)
    bytes[index] = text.charCodeAt(index);
  return bytes;
}
