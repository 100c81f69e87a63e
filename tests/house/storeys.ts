import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { readText, root } from './repository.ts';

const require = createRequire(import.meta.url);

/** The storeys of `.config/storeys.cjs`, ground first, less the rooms that are not built yet. */
export const storeys: readonly (readonly string[])[] = (
  require('../../.config/storeys.cjs') as readonly (readonly string[])[]
)
  .map((rooms) => rooms.filter((room) => isRoom(room) || isFile(room)))
  .filter((rooms) => rooms.length > 0);

/** Rooms that are folders, ground first. */
export const rooms: readonly string[] = storeys.flat().filter(isRoom);

function isRoom(room: string): boolean {
  return existsSync(new URL(`src/${room}/index.ts`, root));
}

function isFile(room: string): boolean {
  return existsSync(new URL(`src/${room}.ts`, root));
}

/** The first sentence of a room's door, without its full stop. */
export function captionOf(room: string): string | undefined {
  const door = readText(`src/${room}/index.ts`);
  const comment =
    /^\/\*\*([\s\S]*?)\*\//.exec(door)?.[1]?.replace(/\n \* ?/g, '\n') ?? '';
  return /^\s*([\s\S]*?)\.(\s|$)/.exec(comment)?.[1]?.replaceAll('\n', ' ');
}
