import { setText, spellOut } from '../font/index.ts';
import type { FontBook, SetText, TextStyle } from '../font/index.ts';

/** Sets words and remembers them: a report says the same words on every sheet. */
export interface Words {
  /** The setter of one look; ask once a run, then use it word by word. */
  readonly inLook: (look: TextStyle) => SetWord;
}

/** Sets one word (or a space) on its baseline. Never throws: see `openWords`. */
export type SetWord = (word: string) => SetText;

// A look's words are forgotten together when there are too many: simpler than one by one, and rare.
const wordsKept = 8000;

/**
 * Opens a setter of words. A character that no face has a glyph for is set as its number in
 * brackets, [U+1F600], and `missing` is told of it, so that nothing is ever drawn wrong in silence.
 */
export function openWords(
  fonts: FontBook,
  missing: (character: string) => void,
): Words {
  const setters = new Map<string, SetWord>();
  const ofLook = new WeakMap<TextStyle, SetWord>();
  const inLook = (look: TextStyle): SetWord => {
    const known = ofLook.get(look);
    if (known !== undefined) return known;
    const features = look.features?.join() ?? '';
    const key = `${look.face}|${look.size}|${look.colour.join()}|${features}`;
    const setWord = setters.get(key) ?? openSetter(look);
    setters.set(key, setWord);
    ofLook.set(look, setWord);
    return setWord;
  };
  const openSetter = (look: TextStyle): SetWord => {
    const words = new Map<string, SetText>();
    return (word) => {
      const known = words.get(word);
      if (known !== undefined) return known;
      const spelled = spellOut(fonts, look.face, word);
      for (const character of spelled.missing) missing(character);
      const set = setText(fonts, look, spelled.text);
      if (words.size >= wordsKept) words.clear();
      words.set(word, set);
      return set;
    };
  };
  return { inLook };
}
