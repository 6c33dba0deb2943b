/** What can be laid over the curves: the choices, and how what is chosen is made. */
import type { Construction } from '#src/acoustics/construction.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import type { BandOverlay } from '#src/charts/band-data.ts';
import type { CurveOverlay, CurveQuantity, CurvesCell, UnitSystem } from '#src/notebook/types.ts';
import { frequencyOverlays } from './frequency-overlays.ts';

export interface OverlayInfo {
  readonly overlay: CurveOverlay;
  readonly label: string;
  readonly fits: (quantity: CurveQuantity) => boolean;
}

const levels = (q: CurveQuantity) => q === 'airborne' || q === 'impact';

/** What a prediction itself holds; textbook models are chosen elsewhere (`textbook-choices.ts`). */
export const OVERLAYS: readonly OverlayInfo[] = [
  { overlay: 'contour', label: 'Rating contour', fits: levels },
  { overlay: 'mass-law', label: 'Mass law', fits: (q) => q === 'airborne' },
  { overlay: 'resonances', label: 'Resonances', fits: () => true },
  { overlay: 'critical', label: 'Critical frequencies', fits: () => true },
  { overlay: 'paths', label: 'Paths', fits: levels },
  { overlay: 'uncertainty', label: 'Uncertainty', fits: (q) => q === 'airborne' },
];

/** Simple models beside the prediction, for learners: what they are is said in `textbook-models.ts`. */
export const TEXTBOOK: readonly Omit<OverlayInfo, 'label'>[] = [
  { overlay: 'limp-panel', fits: (q) => q === 'airborne' },
  { overlay: 'double-leaf', fits: (q) => q === 'airborne' },
  { overlay: 'floating-floor', fits: (q) => q === 'impact' },
  { overlay: 'bare-slab', fits: levels },
];

/** The one scenario that overlays are made for. */
export interface OverlayFocus {
  readonly prediction: Prediction;
  readonly color: string;
  /** Of the floor as it is resolved in that scenario. @throws what resolving it throws. */
  construction(): Construction;
  /** Of the floor below a floating leaf, while there is one. */
  belowFloating(): Prediction | undefined;
}

/** Draws an overlay, or says why there is nothing to draw. */
export type OverlayMaker = (focus: OverlayFocus, quantity: CurveQuantity, units: UnitSystem) => MadeOverlay;
export type MadeOverlay = readonly BandOverlay[] | string;

const FIRST: Partial<Record<CurveOverlay, OverlayMaker>> = {
  resonances: ({ prediction }) => frequencyOverlays(prediction.resonances_Hz, '4 3'),
  critical: ({ prediction }) => frequencyOverlays(prediction.criticalFrequencies_Hz, '1.5 3'),
};

/** Whether the cell asks for more than comes with the first curve. */
export function needsTools({ overlays, lowestBand_Hz }: CurvesCell): boolean {
  return lowestBand_Hz === 20 || overlays.some((overlay) => !FIRST[overlay]);
}

export interface Overlays {
  readonly drawn: readonly BandOverlay[];
  /** A sentence for each that is not drawn though chosen. */
  readonly missing: readonly string[];
}

/** The overlays that the cell asks for and that fit its quantity, as far as their makers are there. */
export function curveOverlays(
  cell: CurvesCell,
  focus: OverlayFocus,
  units: UnitSystem,
  later: Partial<Record<CurveOverlay, OverlayMaker>> = {},
): Overlays {
  const made = [...OVERLAYS, ...TEXTBOOK]
    .filter(({ overlay, fits }) => cell.overlays.includes(overlay) && fits(cell.quantity))
    .map(({ overlay }) => (FIRST[overlay] ?? later[overlay])?.(focus, cell.quantity, units) ?? []);
  return {
    drawn: made.flatMap((m) => (typeof m === 'string' ? [] : m)),
    missing: made.filter((m) => typeof m === 'string'),
  };
}
