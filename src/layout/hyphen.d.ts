// The package brings no types; this is the part of it that hyphenate.ts uses.
declare module 'hyphen' {
  function createHyphenator(
    patterns: unknown,
    options: {
      readonly hyphenChar: string;
      readonly minWordLength: number;
      readonly html: boolean;
    },
  ): (text: string) => string;
  export = createHyphenator;
}
declare module 'hyphen/patterns/en-us.js' {
  const patterns: unknown;
  export = patterns;
}
