import type { Box, LaidFigure } from '../../src/figure/index.ts';

/** What is wrong with how a figure is laid out, in words; empty where all is well. */
export function faultsOf({
  drawing,
  labels,
  obstacles,
}: LaidFigure): readonly string[] {
  const faults: string[] = [];
  const { width, height } = drawing;
  for (const [index, label] of labels.entries()) {
    if (labels.slice(index + 1).some((other) => isOver(label, other)))
      faults.push(`label ${describe(label)} covers another`);
    const hidden = obstacles.find((other) => isOver(label, other));
    if (hidden !== undefined)
      faults.push(`label ${describe(label)} covers ${describe(hidden)}`);
  }
  for (const box of [...labels, ...obstacles]) {
    const isInside =
      box.left >= -0.01 &&
      box.top >= -0.01 &&
      box.right <= width + 0.01 &&
      box.bottom <= height + 0.01;
    if (!isInside) faults.push(`${describe(box)} is outside ${width} × ${height}`);
  }
  return faults;
}

function isOver(a: Box, b: Box): boolean {
  const hair = 0.01;
  return (
    a.left < b.right - hair &&
    b.left < a.right - hair &&
    a.top < b.bottom - hair &&
    b.top < a.bottom - hair
  );
}

function describe({ left, top, right, bottom }: Box): string {
  return `[${[left, top, right, bottom].map((edge) => edge.toFixed(1)).join(' ')}]`;
}
