import { openOutput } from './output.ts';
import type { Output } from './output.ts';

/** An output that keeps objects back, to be packed into streams. */
export interface PackedOutput extends Output {
  /** The texts of the objects kept back, by their numbers in the order of writing. */
  readonly kept: ReadonlyMap<number, string>;
}

/**
 * An output that passes streams on and keeps all other objects back. PDFKit prints an object in
 * lines: `12 0 obj`, its value, then `endobj` or a stream; which of them it is shows only after the value.
 */
export function openPackedOutput(): PackedOutput {
  const output = openOutput();
  const kept = new Map<number, string>();
  let head: { readonly number: number; value?: string } | undefined;
  const passOn = (data: string | Uint8Array): number => {
    if (head === undefined) return output.add(data);
    const { number, value = '' } = head;
    head = undefined;
    return output.add(`${number} 0 obj`) + output.add(value) + output.add(data);
  };
  const add = (data: string | Uint8Array): number => {
    if (typeof data !== 'string') return passOn(data);
    if (head === undefined) {
      const number = /^(\d+) 0 obj$/u.exec(data)?.[1];
      if (number === undefined) return passOn(data);
      head = { number: Number(number) };
      return 0;
    }
    if (head.value === undefined) {
      head.value = data;
      return 0;
    }
    if (data !== 'endobj') return passOn(data);
    kept.set(head.number, head.value);
    head = undefined;
    return 0;
  };
  return { add, bytes: () => output.bytes(), kept };
}
