/** What makes the overlays that do not come with the first curve: one piece, loaded for cells that ask for one. */
import type { CurveOverlay } from '#src/notebook/types.ts';
import type { OverlayMaker } from './curve-overlays.ts';
import { PREDICTION_OVERLAYS } from './prediction-overlays.ts';
import { TEXTBOOK_MODELS, type TextbookModel } from './textbook-models.ts';

export { lowBands } from './low-bands.ts';

export const overlayMakers: Partial<Record<CurveOverlay, OverlayMaker>> = {
  ...PREDICTION_OVERLAYS,
  ...Object.fromEntries(TEXTBOOK_MODELS.map((model) => [model.overlay, drawnOrNamed(model)])),
};

/** Under the picture a reason needs the name of what it is about. */
function drawnOrNamed({ label, line }: TextbookModel): OverlayMaker {
  return (...asked) => {
    const made = line(...asked);
    return typeof made === 'string' ? `${label} is not drawn: ${made}.` : made;
  };
}
