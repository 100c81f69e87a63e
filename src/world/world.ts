/** What reading can answer: the bytes, or why there are none. */
export type ReadAnswer =
  | { readonly bytes: Uint8Array }
  | { readonly missing: true }
  | { readonly refused: string };

/** A file held open and read piece by piece. Its calls throw where the disk fails under it. */
export interface OpenFile {
  /** In bytes, when it was opened. */
  readonly size: number;
  /** The bytes from `offset` on, `length` of them or as many as there are. */
  readonly readAt: (offset: number, length: number) => Uint8Array;
  /** Lets go of the file; nothing can be read afterwards. */
  readonly close: () => void;
}

/** What opening can answer: the file, or why there is none. */
export type OpenAnswer =
  | { readonly file: OpenFile }
  | { readonly missing: true }
  | { readonly refused: string };

/** What writing can answer: done, or why not, in words for the user. */
export type WriteAnswer = { readonly written: true } | { readonly refused: string };

/**
 * Everything outside the program, behind one interface, so that the compiler is a pure function
 * of it. Paths are absolute or relative to the working folder, with forward slashes. All calls
 * answer at once; none throws for a user's mistake.
 */
export interface World {
  /** A file's bytes. */
  readonly read: (path: string) => ReadAnswer;
  /** Opens a file to be read piece by piece; the caller closes it. */
  readonly open: (path: string) => OpenAnswer;
  /** Size of a file in bytes; undefined where there is no such file (a folder counts as none). */
  readonly sizeOf: (path: string) => number | undefined;
  /** Names in a folder (files and folders, these with a slash at the end), sorted by code unit; undefined where there is no such folder. */
  readonly list: (folder: string) => readonly string[] | undefined;
  /** Writes beside the target and renames, so that an interrupted run loses nothing. */
  readonly write: (path: string, bytes: Uint8Array) => WriteAnswer;
  /** The same for a file that must not be there yet: where there is one, even one made this instant, it is refused and left as it is. */
  readonly writeNew: (path: string, bytes: Uint8Array) => WriteAnswer;
  /** Makes a folder and those above it. */
  readonly makeFolder: (path: string) => WriteAnswer;
  /** A file of the program itself: `fonts/…`, `report-templates/…` or a KaTeX face by its file name. */
  readonly ownFile: (name: string) => Uint8Array;
}
