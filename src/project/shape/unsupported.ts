import { firstLine } from './misfit.ts';
import type { Shape } from './shape.ts';

/** Something that the format has and this version does not work: an error of its own kind, whatever stands there. */
export function unsupported(message: string, hint: string): Shape<never> {
  return {
    expects: 'nothing yet',
    // Fits nothing, so that an editor marks it as well.
    schema: { not: {} },
    read: (tree, reading) => {
      const span = firstLine(tree.span, reading.text);
      reading.report({ code: 'not-supported', message, span, hints: [hint] });
      return undefined;
    },
  };
}
