/**
 * A cross-section as shapes in metres: what is drawn where, before anything is drawn. x runs along the section, which is
 * cut across the joists; y runs down from the upper surface.
 */

/** Drafting convention by which an area is filled. */
export type Hatch =
  | 'concrete'
  | 'topping'
  | 'panel'
  | 'timber'
  | 'gypsum'
  | 'mat'
  | 'covering'
  | 'insulation'
  | 'metal'
  | 'rubber'
  | 'open';

export type Part =
  | 'covering'
  | 'sheet'
  | 'mat'
  | 'fill'
  | 'joist'
  | 'joist-flange'
  | 'joist-web'
  | 'ceiling-joist'
  | 'channel'
  | 'furring'
  | 'clip'
  | 'hanger-rod'
  | 'hanger-spring'
  | 'wire'
  | 'screw';

/** Where a shape comes from: index of the layer in the construction, and of the sheet in its leaf. */
export interface Origin {
  /** Absent: the covering. */
  readonly layer?: number;
  readonly sheet?: number;
}

export interface Box extends Origin {
  readonly shape: 'box';
  readonly part: Part;
  readonly hatch: Hatch;
  readonly x_m: number;
  readonly y_m: number;
  readonly width_m: number;
  readonly height_m: number;
}

/** Thin things: open lines from point to point. */
export interface Line extends Origin {
  readonly shape: 'line';
  readonly part: Part;
  readonly points_m: readonly (readonly [x: number, y: number])[];
}

export type Shape = Box | Line;

/** One link of the chain of dimensions. */
export interface Dimension extends Origin {
  readonly from_m: number;
  readonly to_m: number;
  readonly of: 'covering' | 'sheet' | 'mat' | 'cavity' | 'support';
}

export interface Section {
  readonly width_m: number;
  readonly height_m: number;
  /** In the order they are drawn: later ones lie on top. */
  readonly shapes: readonly Shape[];
  /** From the top down, without gaps. */
  readonly dimensions: readonly Dimension[];
}
