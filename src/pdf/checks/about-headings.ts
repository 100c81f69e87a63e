import type { Check } from './opened-pdf.ts';

/** Headings: the first is an H1, and none skips a level on the way down (PDF/UA-1, 7.4.2). */
export const aboutHeadings: Check = {
  about: 'headings',
  find: ({ elements }) => {
    const levels = elements.flatMap(({ type }) => {
      const level = /^H([1-6])$/u.exec(type)?.[1];
      return level === undefined ? [] : [Number(level)];
    });
    return levels.flatMap((level, index) => {
      const before = levels[index - 1] ?? 0;
      return level > before + 1 ? [`an H${level} follows an H${before}`] : [];
    });
  },
};
