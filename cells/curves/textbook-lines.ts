/** The lines of the textbook models, each for a floor that it is made for; for others the reason. */
import { valuesAt } from '#src/acoustics/ratings/spectrum.ts';
import { bareSlabLnw, bareSlabRw } from '#src/acoustics/simple/bare-slab.ts';
import { floatingImprovement_dB } from '#src/acoustics/simple/floating-floor.ts';
import { bareSlabOf, doubleLeafOf, floatingLeafOf } from '#src/acoustics/simple/model-fits.ts';
import { sewellPanel_dB } from '#src/acoustics/simple/sewell-panel.ts';
import { simpleFloor } from '#src/acoustics/simple/simple-floor.ts';
import { threeBranchDoubleLeaf } from '#src/acoustics/simple/three-branch-double-leaf.ts';
import { REFERENCE_THIRD as AIRBORNE_CONTOUR } from '#src/acoustics/standards/iso-717-1.ts';
import { REFERENCE_THIRD as IMPACT_CONTOUR } from '#src/acoustics/standards/iso-717-2.ts';
import { type BandTable, bandsOf, valuesOf } from '#src/acoustics/standards/table.ts';
import type { LineOverlay } from '#src/charts/band-data.ts';
import { hertzText } from '#src/charts/hertz-text.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import type { OverlayMaker } from './curve-overlays.ts';

export const limpPanel: OverlayMaker = ({ prediction, construction }, _quantity, units) => {
  const { length_m, width_m } = construction();
  const { bands_Hz, surfaceMass_kg_m2 } = prediction;
  const area_m2 = length_m * width_m;
  const mass = formatQuantity(surfaceMass_kg_m2, 'surface-mass', units);
  const size = [length_m, width_m].map((side) => formatQuantity(side, 'span', units)).join(' × ');
  return textbookLine({
    label: 'limp panel',
    description: `limp panel (Sewell): ${mass}, ${size}; no stiffness, cavity or supports`,
    values_dB: bands_Hz.map((frequency_Hz) => sewellPanel_dB({ surfaceMass_kg_m2, area_m2, frequency_Hz })),
    dash: '14 4 6 4',
  });
};

export const doubleLeaf: OverlayMaker = ({ prediction, construction }) => {
  const leaves = doubleLeafOf(simpleFloor(construction()));
  if (typeof leaves === 'string') return leaves;
  const { R_dB, resonance_Hz, limit_Hz } = threeBranchDoubleLeaf({ bands_Hz: prediction.bands_Hz, ...leaves });
  const [f0, limit] = [resonance_Hz, limit_Hz].map(hertzText);
  return textbookLine({
    label: 'double leaf',
    description: `double leaf (Sharp): mass law below f0 ${f0}, 18 dB per octave up to ${limit}, both mass laws and 6 dB above; no supports, no dip, no coincidence`,
    values_dB: R_dB,
    dash: '10 2 2 2 2 2',
  });
};

export const floatingFloor: OverlayMaker = ({ prediction, construction, belowFloating }) => {
  const floor = simpleFloor(construction());
  const floating = floatingLeafOf(floor);
  if (typeof floating === 'string') return floating;
  const below = belowFloating();
  if (!below) return [];
  const { kind, resonance_Hz } = floating;
  const { bands_Hz } = prediction;
  const rest_dB = valuesAt({ bands_Hz: below.bands_Hz, values_dB: below.Ln_dB }, bands_Hz);
  const rule = `${kind === 'plate' ? 30 : 40} lg(f/f0)`;
  return textbookLine({
    label: 'Cremer',
    description: `floating floor (Cremer): the floor below the mat less ${rule}, f0 ${hertzText(resonance_Hz)}; nothing below f0${floor.hasCovering ? ', nothing for the covering' : ''}`,
    values_dB: bands_Hz.map((band, i) => rest_dB[i]! - floatingImprovement_dB(band, resonance_Hz, kind)),
    dash: '10 2 2 2 2 2',
  });
};

export const bareSlab: OverlayMaker = ({ prediction, construction }, quantity, units) => {
  const slab = bareSlabOf(simpleFloor(construction()));
  if (typeof slab === 'string') return slab;
  const impact = quantity === 'impact';
  const rating_dB = (impact ? bareSlabLnw : bareSlabRw)(slab.surfaceMass_kg_m2);
  const [mass, least, most] = [slab.surfaceMass_kg_m2, impact ? 100 : 150, 600].map((m) =>
    formatQuantity(m, 'surface-mass', units),
  );
  if (Number.isNaN(rating_dB))
    return `it holds from ${least} ${impact ? `to ${most}` : 'up'}, and this slab has ${mass}`;
  const whole = Math.round(rating_dB);
  return textbookLine({
    label: 'bare slab',
    description: `bare slab (EN 12354): ${impact ? `Ln,w ${whole} by 164 − 35 lg m′` : `Rw ${whole} by 37.5 lg m′ − 42`} with ${mass}, as the contour of that rating`,
    values_dB: contourAt(rating_dB, impact ? IMPACT_CONTOUR : AIRBORNE_CONTOUR, prediction.bands_Hz),
    dash: '3 5',
  });
};

const textbookLine = (line: Omit<LineOverlay, 'kind'>): readonly LineOverlay[] => [{ kind: 'line', ...line }];

/** The rating is the contour's value at 500 Hz. */
function contourAt(rating_dB: number, contour: BandTable, bands_Hz: readonly number[]): number[] {
  const shape = { bands_Hz: bandsOf(contour), values_dB: valuesOf(contour) };
  const [at500 = Number.NaN] = valuesAt(shape, [500]);
  return valuesAt(shape, bands_Hz).map((value) => value - at500 + rating_dB);
}
