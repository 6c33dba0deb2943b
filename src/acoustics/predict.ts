import { bandEnergies } from './band-energies.ts';
import type { Construction } from './construction.ts';
import { height_m, surfaceMass_kg_m2 } from './dimensions.ts';
import { flankingOf } from './flanking.ts';
import { floorModel, holdsLowerLeaf, joinsLeaves } from './floor-model.ts';
import { normalisedImpactLevel_dB } from './impact.ts';
import { leakBands } from './leak-bands.ts';
import { Mechanisms } from './mechanisms.ts';
import { MODEL_CONSTANTS } from './model-constants.ts';
import type { PathLevels, PathName, Prediction, PredictOptions } from './prediction.ts';
import { quadratureFor } from './quadrature.ts';
import { energySum_dB } from './ratings/energy.ts';
import { rateBands } from './ratings/rate-bands.ts';
import { criticalFrequencies, resonances } from './resonances.ts';
import { nominalBandsFrom } from './third-octave-bands.ts';

/**
 * Predicts a floor-ceiling: transmission loss and impact level per one-third octave with the part of every path, the
 * ratings, and what rules each band. METHOD.md explains the model.
 *
 * @throws TypeError, RangeError for constructions that cannot be computed, saying what, where and what was expected.
 */
export function predict(construction: Construction, options: PredictOptions = {}): Prediction {
  const model = floorModel(construction, options.constants ?? MODEL_CONSTANTS);
  const quadrature = options.quadrature ?? quadratureFor(model);
  const bands_Hz = nominalBandsFrom(options.lowestBand_Hz ?? 50);
  const around = flankingOf(construction, bands_Hz, (part) => predict(part, options));

  const { airborne: through, impact: struck } = bandEnergies(model, bands_Hz, quadrature);
  const leaks = leakBands(model, bands_Hz);
  const z0 = model.air.density_kg_m3 * model.air.soundSpeed_m_s;
  const joined = model.interlayers.some(joinsLeaves);
  const held = model.interlayers.some(holdsLowerLeaf);

  const R_dB: number[] = [];
  const Ln_dB: number[] = [];
  const impactDirect: number[] = [];
  const impactSupports: number[] = [];
  const impactFlanking: number[] = [];
  const paths_dB: Partial<Record<PathName, number[]>> = {};
  bands_Hz.forEach((_, band) => {
    const direct = through.direct[band]!;
    const supports = through.supports[band]!;
    const paths: { path: PathName; tau: number }[] = [{ path: 'direct', tau: direct }];
    if (joined) paths.push({ path: 'supports', tau: supports });
    const floorLn_dB = normalisedImpactLevel_dB(struck.direct[band]! + struck.supports[band]!, z0);
    const flanked = around?.(band, { R_dB: -10 * Math.log10(direct + supports), Ln_dB: floorLn_dB });
    if (flanked) paths.push({ path: 'flanking', tau: flanked.tau });
    if (leaks) paths.push({ path: 'leaks', tau: leaks[band]! });
    for (const { path, tau } of paths) {
      let levels = paths_dB[path];
      if (!levels) paths_dB[path] = levels = [];
      levels.push(-10 * Math.log10(tau));
    }
    R_dB.push(
      -10 *
        Math.log10(
          Math.min(
            paths.reduce((sum, p) => sum + p.tau, 0),
            1,
          ),
        ),
    );
    if (flanked?.Ln_dB !== undefined) impactFlanking.push(flanked.Ln_dB);
    Ln_dB.push(flanked?.Ln_dB === undefined ? floorLn_dB : energySum_dB([floorLn_dB, flanked.Ln_dB]));
    impactDirect.push(normalisedImpactLevel_dB(struck.direct[band]!, z0));
    impactSupports.push(normalisedImpactLevel_dB(struck.supports[band]!, z0));
  });
  const impactPaths_dB: PathLevels = {
    direct: impactDirect,
    ...(held && { supports: impactSupports }),
    ...(impactFlanking.length > 0 && { flanking: impactFlanking }),
  };
  const mechanisms = new Mechanisms(model, bands_Hz);

  return {
    bands_Hz,
    R_dB,
    paths_dB,
    Ln_dB,
    impactPaths_dB,
    ratings: rateBands({ bands_Hz, R_dB, Ln_dB }),
    surfaceMass_kg_m2: surfaceMass_kg_m2(model),
    height_m: height_m(model),
    resonances_Hz: resonances(model),
    criticalFrequencies_Hz: criticalFrequencies(model),
    mechanisms: mechanisms.airborne(paths_dB),
    impactMechanisms: mechanisms.impact(impactPaths_dB),
  };
}
