/** Orders names as people do: runs of digits by their number, so that B2 stands before B10; else by code unit. */
export function naturalOrder(one: string, other: string): number {
  const [ours, theirs] = [pieces(one), pieces(other)];
  for (const [index, piece] of ours.entries()) {
    const against = theirs[index];
    if (against === undefined) return 1;
    if (piece === against) continue;
    const bothNumbers = /^\d/.test(piece) && /^\d/.test(against);
    const difference = bothNumbers ? Number(piece) - Number(against) : 0;
    if (difference !== 0) return difference;
    return piece < against ? -1 : 1;
  }
  return ours.length - theirs.length;
}

const pieces = (name: string): readonly string[] => name.match(/\d+|\D+/g) ?? [];
