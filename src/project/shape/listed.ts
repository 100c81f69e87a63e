/** Names that one hint lists; more would drown it. */
const most = 12;

/** Names with commas between, the tail of a long list counted only. */
export function listed(names: Iterable<string>): string {
  const all = [...names];
  const shown = all.slice(0, most).join(', ');
  return all.length <= most ? shown : `${shown} and ${all.length - most} more`;
}
