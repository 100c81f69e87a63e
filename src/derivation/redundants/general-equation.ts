import {
  minus,
  name,
  number,
  plus,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
} from '../../equation/index.ts';
import type { ContinuousSetting } from './continuous-setting.ts';

const general = (letter: string, subscript: string, meaning: string): Expression =>
  name({ letter, subscript, meaning });

/** M_{i−1} L_i + 2 M_i (L_i + L_{i+1}) + M_{i+1} L_{i+1} = −6 A_i ā_i / L_i − 6 A_{i+1} b̄_{i+1} / L_{i+1}, and what moves. */
export function generalEquation(setting: ContinuousSetting): Statement {
  const moment = (i: string): Expression =>
    general('M', i, 'bending moment at a support, numbered from left to right');
  const length = (i: string): Expression =>
    general('L', i, 'length of the span that ends at support i');
  const area = (i: string): Expression =>
    general('A', i, 'area of the moment diagram of a span on simple supports');
  const arm = (letter: string, i: string): Expression =>
    name({
      letter,
      subscript: i,
      bar: true,
      meaning: `distance of the centroid of such an area from the ${letter === 'a' ? 'left' : 'right'} end of its span`,
    });
  const next = 'i+1';
  const six = (letter: string, i: string): Expression =>
    quotient(product(number(6), area(i), arm(letter, i)), length(i));
  const hasSinks = setting.beam.supports.some(({ sinks }) => sinks !== 0);
  const sunk = (i: string): Expression => general('δ', i, 'settlement of a support');
  const EI = product(
    name({ letter: 'E', meaning: 'modulus of elasticity' }),
    name({ letter: 'I', meaning: 'second moment of area about the bending axis' }),
  );
  return {
    lines: [
      {
        left: sum(
          product(moment('i−1'), length('i')),
          product(number(2), moment('i'), sum(length('i'), length(next))),
          product(moment(next), length(next)),
        ),
        chain: [
          {
            sign: '=',
            of: sum(
              minus(six('a', 'i')),
              minus(six('b', next)),
              ...(hasSinks
                ? [
                    plus(
                      product(
                        number(6),
                        EI,
                        sum(
                          quotient(sum(sunk('i'), minus(sunk('i−1'))), length('i')),
                          quotient(sum(sunk('i'), minus(sunk(next))), length(next)),
                        ),
                      ),
                    ),
                  ]
                : []),
            ),
          },
        ],
        recheck: 'none',
      },
    ],
  };
}
