/** Overlays made from the prediction alone. */
import type { PathLevels, Prediction } from '#src/acoustics/prediction.ts';
import { apparentName } from '#src/acoustics/ratings/apparent-names.ts';
import type { ContourFit } from '#src/acoustics/ratings/contour-fit.ts';
import { iic } from '#src/acoustics/ratings/iic.ts';
import { lnw } from '#src/acoustics/ratings/lnw.ts';
import { rw } from '#src/acoustics/ratings/rw.ts';
import { stc } from '#src/acoustics/ratings/stc.ts';
import { massLaw_dB } from '#src/acoustics/simple/mass-law.ts';
import { LOWEST_MEASURED_BAND_HZ, predictionUncertainty } from '#src/acoustics/uncertainty.ts';
import { type BandOverlay, type LineOverlay, levelText, type RangeOverlay } from '#src/charts/band-data.ts';
import { PATH_MARKS, PATH_NAMES } from '#src/charts/path-marks.ts';
import type { CurveQuantity, UnitSystem } from '#src/notebook/types.ts';
import { formatQuantity } from '#src/quantities/format-quantity.ts';
import type { OverlayFocus, OverlayMaker } from './curve-overlays.ts';

export const PREDICTION_OVERLAYS = {
  contour: contourOverlay,
  'mass-law': massLawLine,
  paths: ({ prediction }, quantity) =>
    quantity === 'impact' ? pathLines(prediction.impactPaths_dB, 'Ln') : pathLines(prediction.paths_dB, 'R'),
  uncertainty: uncertaintyRange,
} satisfies Record<string, OverlayMaker>;

/** What the floor's whole mass would do as one limp leaf, in field incidence. */
function massLawLine(
  { prediction }: OverlayFocus,
  _quantity: CurveQuantity,
  units: UnitSystem,
): readonly LineOverlay[] {
  const { bands_Hz, surfaceMass_kg_m2 } = prediction;
  const mass = formatQuantity(surfaceMass_kg_m2, 'surface-mass', units);
  return [
    {
      kind: 'line',
      label: 'mass law',
      description: `mass law: ${mass} as one limp leaf, sound from all sides but grazing`,
      values_dB: bands_Hz.map((frequency_Hz) => massLaw_dB({ surfaceMass_kg_m2, frequency_Hz, incidence: 'field' })),
      dash: '14 3',
    },
  ];
}

function uncertaintyRange({ prediction, color }: OverlayFocus): readonly RangeOverlay[] {
  const { bands_Hz, R_dB, paths_dB } = prediction;
  const { expanded_dB } = predictionUncertainty(bands_Hz);
  const around = (sign: 1 | -1) => R_dB.map((R, i) => R + sign * expanded_dB[i]!);
  return [
    {
      kind: 'range',
      label: 'uncertainty',
      description: [
        `where 95 of 100 laboratories would measure ${notExact(paths_dB)}: what laboratories differ by (ISO 12999-1, situation A, table from memory) and the errors of this model against measured floors and partition walls together`,
        ...(bands_Hz.some((band) => band < LOWEST_MEASURED_BAND_HZ) ? [BORROWED] : []),
      ].join('. '),
      guessedBelow_Hz: LOWEST_MEASURED_BAND_HZ,
      low_dB: around(-1),
      high_dB: around(1),
      color,
    },
  ];
}

/** What is rated by laboratories is the floor alone: the band says nothing of what else may be in the curve. */
function notExact({ flanking, leaks }: PathLevels): string {
  const besides = [flanking && 'the walls around it', leaks && 'its gaps'].filter(Boolean).join(' and ');
  return besides
    ? `this floor if ${besides} let through exactly what is assumed (how far a building is off there is not in it)`
    : 'this floor';
}

const BORROWED = `Paler below ${LOWEST_MEASURED_BAND_HZ} Hz: no measurement that this model was compared with reaches there, so its error is borrowed from the octave above and may be larger`;

function pathLines(paths: PathLevels, symbol: string): readonly LineOverlay[] {
  return PATH_NAMES.flatMap((path) => {
    const values_dB = paths[path];
    if (!values_dB) return [];
    const { label, description, dash } = PATH_MARKS[path];
    return [{ kind: 'line', label, description: `${symbol} if only ${label}: ${description}`, values_dB, dash }];
  });
}

/** The contour of the ratings that go with the notebook's units: STC and IIC with inches, Rw and Ln,w with metres. */
function contourOverlay(
  { prediction }: OverlayFocus,
  quantity: CurveQuantity,
  units: UnitSystem,
): readonly BandOverlay[] {
  const { bands_Hz } = prediction;
  const impact = quantity === 'impact';
  const { name, fit, standard } = ratingFit(prediction, impact, units);
  if (!fit.contour_dB.some(Number.isFinite)) return [];
  const at = (values: readonly number[], otherwise: number) =>
    bands_Hz.map((band) => values[fit.bands_Hz.indexOf(band)] ?? otherwise);
  return [
    {
      kind: 'contour',
      label: `${name} contour`,
      description: `${name}: contour of ${standard}, and how far the curve ${impact ? 'exceeds' : 'misses'} it: ${missed(fit)}. ${choiceByUnits(impact, units)}`,
      values_dB: at(fit.contour_dB, NaN),
      deficiencies_dB: at(fit.deficiencies_dB, 0),
      missing: impact ? 'above' : 'below',
    },
  ];
}

function ratingFit(prediction: Prediction, impact: boolean, units: UnitSystem) {
  const { bands_Hz, R_dB, Ln_dB, paths_dB, impactPaths_dB } = prediction;
  const called = (impact ? impactPaths_dB : paths_dB).flanking ? apparentName : (name: string) => name;
  const inchPound = units === 'inch-pound';
  if (impact) {
    const spectrum = { bands_Hz, values_dB: Ln_dB };
    const { IIC, fit } = iic(spectrum);
    if (inchPound) return { name: `${called('IIC')} ${IIC}`, fit, standard: 'ASTM E989' };
    const weighted = lnw(spectrum);
    return { name: `${called('Ln,w')} ${weighted.Lnw}`, fit: weighted.fit, standard: 'ISO 717-2' };
  }
  const spectrum = { bands_Hz, values_dB: R_dB };
  if (inchPound) {
    const { STC, fit } = stc(spectrum);
    return { name: `${called('STC')} ${STC}`, fit, standard: 'ASTM E413' };
  }
  const { Rw, fit } = rw(spectrum);
  return { name: `${called('Rw')} ${Rw}`, fit, standard: 'ISO 717-1' };
}

/** Nobody chose it: it goes with the units. */
function choiceByUnits(impact: boolean, units: UnitSystem): string {
  const [metric, inchPound] = impact ? ['Ln,w', 'IIC'] : ['Rw', 'STC'];
  return units === 'SI'
    ? `With inches and pounds the contour of ${inchPound} stands here`
    : `With metres and kilograms the contour of ${metric} stands here`;
}

function missed({ sum_dB, largest_dB, largestBand_Hz }: ContourFit): string {
  if (!(largest_dB > 0)) return 'nowhere';
  return `${levelText(sum_dB)} dB in all, most at ${largestBand_Hz} Hz with ${levelText(largest_dB)} dB`;
}
