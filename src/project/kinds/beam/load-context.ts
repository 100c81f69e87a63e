import { nearest } from '../../../diagnostics/index.ts';
import type { BeamDefinition, BeamSupport } from '../../definitions.ts';
import type { Premises } from '../../premises.ts';
import type { Reading } from '../../reading.ts';
import type { Placed } from '../../shape/shape.ts';
import type { Axis } from './axis.ts';
import { listed } from '../../shape/listed.ts';

/** What reading the loads of one beam leans on. */
export interface LoadContext {
  readonly axis: Axis;
  readonly hinges: BeamDefinition['hinges'];
  readonly supports: readonly BeamSupport[];
  readonly premises: Premises;
  readonly reading: Reading;
  /** The next load's id: counts in file order, so that ids sort as the file reads. */
  readonly nextId: () => string;
}

/** The ids that exist among those a load leans on; unknown ones are reported. */
export function readUses(
  uses: readonly Placed<string>[] | undefined,
  premises: Premises,
  reading: Reading,
): readonly string[] {
  const { ids } = premises;
  return (uses ?? []).flatMap((id) => {
    if (ids === undefined || ids.has(id.value)) return [id.value];
    const near = nearest(id.value, ids);
    reading.report({
      code: 'unknown-id',
      message: `project.yaml has no assumption or reference \`${id.value}\``,
      span: id.span,
      hints: [
        near !== undefined
          ? `write \`${near}\``
          : ids.size > 0
            ? `ids in project.yaml: ${listed(ids)}`
            : 'add it to assumptions or references in project.yaml',
      ],
    });
    return [];
  });
}
