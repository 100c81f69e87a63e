import { missingCharacters, setText } from '../font/index.ts';
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
      const set = setText(fonts, look, spellOut(word, look.face));
      if (words.size >= wordsKept) words.clear();
      words.set(word, set);
      return set;
    };
  };
  const spellOut = (word: string, face: string): string => {
    const drawn = word
      .normalize('NFC')
      .replaceAll('\u2011', '-')
      .replaceAll('\u00ad', '');
    const absent = missingCharacters(fonts, face, drawn);
    for (const character of absent) missing(character);
    return absent.reduce(
      (text, character) => text.replaceAll(character, `[${codePoint(character)}]`),
      drawn,
    );
  };
  return { inLook };
}

/** A character's number as Unicode writes it: U+1F600. */
export function codePoint(character: string): string {
  const number = (character.codePointAt(0) ?? 0).toString(16).toUpperCase();
  return `U+${number.padStart(4, '0')}`;
}
