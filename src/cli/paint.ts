import { styleText } from 'node:util';

/** What a stretch of text is to its reader. */
export type Role = 'error' | 'remark' | 'good' | 'strong' | 'quiet';

/** Colours a stretch of text for its role, or leaves it as it is. */
export type Paint = (role: Role, text: string) => string;

type Style = Parameters<typeof styleText>[0];

const styles: Readonly<Record<Role, Style>> = {
  error: ['bold', 'red'],
  remark: 'yellow',
  good: 'green',
  strong: 'bold',
  quiet: 'dim',
};

/** The paint of a stream that takes colours, or of one that does not. */
export function paintFor(isColoured: boolean): Paint {
  return isColoured
    ? (role, text) => styleText(styles[role], text, { validateStream: false })
    : (_, text) => text;
}

/** Text from a file or a command line with control characters shown, so that it cannot steer the terminal. */
export function printable(text: string): string {
  return text.replace(/[^\P{Cc}\n]/gu, (sign) => (sign === '\t' ? ' ' : '\ufffd'));
}
