/** Names that one hint lists; more would drown it. */
const most = 12;

/** Names with commas between; of a long list the first dozen, and that there are more. */
export function listed(names: Iterable<string>): string {
  const shown: string[] = [];
  for (const name of names) {
    if (shown.length === most) return `${shown.join(', ')} and others`;
    shown.push(name);
  }
  return shown.join(', ');
}
