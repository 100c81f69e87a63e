/** A node of KaTeX's tree: spans, symbols, SVG, links and fragments have these in part. */
export interface KatexNode {
  readonly classes?: readonly string[];
  readonly style?: Readonly<Record<string, string | undefined>>;
  readonly children?: readonly KatexNode[];
  readonly attributes?: Readonly<Record<string, string | undefined>>;
  readonly height?: number;
  readonly depth?: number;
  /** Of a symbol alone. */
  readonly text?: string;
  readonly italic?: number;
  /** Of a path alone: its name, and its data where they are computed. */
  readonly pathName?: string;
  readonly alternate?: string | null;
  /** Of a picture file alone. */
  readonly src?: string;
  readonly toMarkup: () => string;
}
