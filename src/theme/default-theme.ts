import type { Theme } from './theme.ts';

/** The house's own look: black line work, one accent (a dark madder), a wide binding side. */
export const defaultTheme: Theme = {
  paper: { left: 72, right: 36, top: 54, foot: 66, marginColumn: 70, marginGap: 14 },
  text: {
    size: 10.2,
    leading: 14,
    small: 8.2,
    smallLeading: 11,
    h1: 19,
    h2: 13,
    h3: 10.6,
    equation: 10.6,
    paragraphGap: 5,
    equationGap: 7,
  },
  line: { member: 1.4, load: 0.8, dimension: 0.4, diagram: 1, rule: 0.5 },
  colour: {
    ink: [0, 0, 0],
    muted: [0.36, 0.36, 0.36],
    accent: [0.53, 0.11, 0.15],
    hatch: [0.62, 0.62, 0.62],
    fill: [0.93, 0.93, 0.93],
  },
};
