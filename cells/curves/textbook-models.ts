/**
 * Simple models of the textbooks, drawn beside the prediction so that it can be seen what each of them knows and what it
 * leaves out. A floor that a model is not made for gets the reason instead of a line.
 */
import { messageOf } from '#src/notebook/message-of.ts';
import type { CurveOverlay } from '#src/notebook/types.ts';
import type { OverlayMaker } from './curve-overlays.ts';
import { bareSlab, doubleLeaf, floatingFloor, limpPanel } from './textbook-lines.ts';

export interface TextbookModel {
  readonly overlay: CurveOverlay;
  /** On the choice, in the trade's words. */
  readonly label: string;
  /** Where it comes from, and where it does not hold. */
  readonly about: string;
  readonly line: OverlayMaker;
}

const MODELS: readonly TextbookModel[] = [
  {
    overlay: 'limp-panel',
    label: 'One limp panel of this size',
    about:
      'Sewell 1970 (from memory): the mass law of a panel with edges. It knows neither stiffness nor cavities: wrong from the critical frequency up and for whatever decouples.',
    line: limpPanel,
  },
  {
    overlay: 'double-leaf',
    label: 'Textbook double leaf',
    about:
      'Sharp 1978 (from memory): the mass law of the whole below f0, 18 dB per octave above it, from c/2πd up the mass laws of both leaves and 6 dB. It knows no supports, no dip at f0 and no coincidence, and takes the cavity as well damped: what decoupling could give, not what it gives.',
    line: doubleLeaf,
  },
  {
    overlay: 'floating-floor',
    label: 'Floating floor after Cremer',
    about:
      'Cremer 1952, EN 12354-2:2000 Annex C: the predicted Ln of what lies below the mat, less 30 lg(f/f0) for a screed cast in one piece or 40 lg(f/f0) for dry layers. Made for heavy floors; it knows no rise at f0, no waves in the mat, and not what the weight of a screed does on a light deck.',
    line: floatingFloor,
  },
  {
    overlay: 'bare-slab',
    label: 'Bare slab by its mass',
    about:
      'EN 12354-1 and -2:2000: Rw = 37.5 lg m′ − 42 (from memory) from 150 kg/m², Ln,w = 164 − 35 lg m′ from 100 to 600 kg/m². A single number, drawn as the rating contour that belongs to it: it says nothing about single bands.',
    line: bareSlab,
  },
];

/** What cannot be resolved or has nothing in it is a reason too: the prediction fails just the same, or is about to. */
export const TEXTBOOK_MODELS: readonly TextbookModel[] = MODELS.map((model) => ({
  ...model,
  line: (...asked) => {
    try {
      return model.line(...asked);
    } catch (error) {
      return messageOf(error);
    }
  },
}));
