/** A picture as a PDF holds it: samples, packed by a filter or not yet. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly bits: number;
  /** Colours by channel, or by number in a palette of red, green and blue bytes. */
  readonly colours: 'DeviceGray' | 'DeviceRGB' | { readonly palette: Uint8Array };
  readonly data: Uint8Array;
  readonly packing:
    | { readonly kind: 'none' }
    | { readonly kind: 'jpeg' }
    /** The picture's own deflated lines, each behind a byte that names its PNG filter. */
    | { readonly kind: 'png'; readonly channels: number };
  /** How opaque each pixel is, a byte each; absent where all are. */
  readonly opacity?: Uint8Array;
  /** The one colour that is clear, a number a channel. */
  readonly clearColour?: readonly number[];
}

/** A picture that was read, or why it cannot be: `it is …`, to follow the picture's name. */
export type ReadPicture = Picture | { readonly problem: string };
