import type { LoadDirection } from '../../definitions.ts';
import { nearest } from '../../../diagnostics/index.ts';
import { unitText, countIn, unitOf } from '../../../units/index.ts';
import { quantityOf } from '../../shape/quantity.ts';
import type { Shape } from '../../shape/shape.ts';

const words: Readonly<Record<string, number>> = {
  right: 0,
  up: 90,
  left: 180,
  down: 270,
};
const angle = quantityOf('angle');
const degree = unitOf([{ symbol: 'deg', power: 1 }]);

/** Where a force points when the file does not say. */
export const down: LoadDirection = { degrees: 270 };

/** Where a force points: a word, or an angle from +x, counterclockwise, brought into 0 to 360 degrees. */
export const direction: Shape<LoadDirection> = {
  expects: 'a direction: down, up, left, right or an angle',
  schema: { anyOf: [{ enum: Object.keys(words) }, angle.schema] },
  read: (tree, reading) => {
    const word = tree.kind === 'text' ? tree.text : '';
    const known = Object.hasOwn(words, word) ? words[word] : undefined;
    if (known !== undefined) return { degrees: known, text: word };
    const near = nearest(word, Object.keys(words));
    if (tree.kind === 'text' && /^[a-z]+$/i.test(word)) {
      reading.report({
        code: 'not-one-of',
        message: `\`${word}\` is no direction`,
        span: tree.span,
        hints: [
          near === undefined
            ? 'write down, up, left, right or an angle such as 300 deg'
            : `write \`${near}\``,
        ],
      });
      return undefined;
    }
    const given = angle.read(tree, reading);
    if (given === undefined) return undefined;
    const turns = countIn(given, degree) % 360;
    return {
      degrees: tidied(turns < 0 ? turns + 360 : turns),
      text: given.compound
        ? given.text
        : `${given.text} ${unitText(given.unit, 'data')}`,
    };
  },
};

// 90 deg goes through radians and back; whole degrees stay whole.
const tidied = (degrees: number): number =>
  Math.abs(degrees - Math.round(degrees)) < 1e-9 ? Math.round(degrees) % 360 : degrees;
