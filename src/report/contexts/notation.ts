import { symbolKey, type Symbol } from '../../equation/index.ts';

/**
 * The notation list: every symbol that the package uses, those that differ only in a point or a
 * number told once with `i` in its place: R_A and R_C become R_i, the vertical reaction at i.
 */
export function notationOf(symbols: readonly Symbol[]): readonly Symbol[] {
  const general = symbols.map(generalise);
  const seen = new Map(
    general.map((symbol) => [`${symbolKey(symbol)} ${symbol.meaning}`, symbol]),
  );
  return [...seen.values()].sort((a, b) => compare(a, b));
}

const compare = (a: Symbol, b: Symbol): number =>
  order(a.letter) - order(b.letter) ||
  (a.letter < b.letter ? -1 : a.letter > b.letter ? 1 : 0) ||
  ((a.subscript ?? '') < (b.subscript ?? '') ? -1 : 1);

// Latin capitals, then small letters, then Greek: the order in which a reader looks symbols up.
function order(letter: string): number {
  if (/^[A-Z]/.test(letter)) return 0;
  return /^[a-z]/.test(letter) ? 1 : 2;
}

const words = ['max', 'min'];

function generalise(symbol: Symbol): Symbol {
  const { subscript, meaning } = symbol;
  if (subscript === undefined || words.includes(subscript)) return symbol;
  if (subscript.includes('/'))
    return {
      ...symbol,
      subscript: 'j/i',
      meaning: 'distance of j from i along the member',
    };
  const [, stem = subscript, axis = ''] = /^(.*?)([xy]?)$/.exec(subscript) ?? [];
  const isComponent = axis !== '' && meaning.includes(' part of ');
  const changed = isComponent ? stem : subscript;
  return {
    ...symbol,
    subscript: isComponent ? `i${axis}` : 'i',
    meaning: replaceWord(meaning, changed),
  };
}

/** The particular point or number replaced by `i` wherever it stands as a word. */
function replaceWord(text: string, word: string): string {
  return text
    .split(' ')
    .map((part) => (part === word ? 'i' : part === `${word},` ? 'i,' : part))
    .join(' ');
}
