import type { MemberDefinition } from './definitions.ts';

/** In which order members can be solved, so that what each carries is known before. */
export interface LoadPath {
  /** Marks of the members that can be ordered, each after those that it leans on; otherwise in sheet order. */
  readonly order: readonly string[];
  /** Rings of members that lean on one another, each beginning with the first of them in sheet order. */
  readonly circles: readonly (readonly string[])[];
}

/** Orders members by the reactions that they carry. Reactions of members that are not in the list do not count. */
export function loadPath(
  members: readonly Pick<MemberDefinition, 'mark' | 'carried'>[],
): LoadPath {
  const needs = new Map(
    members.map((member) => [
      member.mark,
      [...new Set(member.carried.map((reaction) => reaction.member))].filter((mark) =>
        members.some((other) => other.mark === mark),
      ),
    ]),
  );
  const order: string[] = [];
  const marks = [...needs.keys()];
  // Round after round the first in sheet order whose needs are met; what stays over leans on a circle.
  for (
    let next = firstReady(marks, needs, order);
    next !== undefined;
    next = firstReady(marks, needs, order)
  )
    order.push(next);
  const left = marks.filter((mark) => !order.includes(mark));
  return { order, circles: circlesAmong(left, needs) };
}

function firstReady(
  marks: readonly string[],
  needs: ReadonlyMap<string, readonly string[]>,
  order: readonly string[],
): string | undefined {
  return marks.find(
    (mark) =>
      !order.includes(mark) &&
      (needs.get(mark) ?? []).every((need) => order.includes(need)),
  );
}

// A member is on a circle when it can be reached from itself; members of one circle reach one another.
function circlesAmong(
  marks: readonly string[],
  needs: ReadonlyMap<string, readonly string[]>,
): readonly (readonly string[])[] {
  const reach = new Map(marks.map((mark) => [mark, reachable(mark, needs)]));
  const onCircle = marks.filter((mark) => reach.get(mark)?.has(mark) === true);
  const circles: string[][] = [];
  for (const mark of onCircle) {
    const known = circles.find(
      ([first = '']) =>
        reach.get(first)?.has(mark) === true && reach.get(mark)?.has(first) === true,
    );
    if (known === undefined) circles.push([mark]);
    else known.push(mark);
  }
  return circles;
}

function reachable(
  from: string,
  needs: ReadonlyMap<string, readonly string[]>,
): ReadonlySet<string> {
  const seen = new Set<string>();
  const open = [...(needs.get(from) ?? [])];
  for (let mark = open.pop(); mark !== undefined; mark = open.pop()) {
    if (seen.has(mark)) continue;
    seen.add(mark);
    open.push(...(needs.get(mark) ?? []));
  }
  return seen;
}
