/** One text for one component of a support's reaction. */
export function reactionKey(point: string, index: number): string {
  return JSON.stringify(['reaction', point, index]);
}
