import { describe, expect, it } from 'vitest';
import { predict } from '#src/acoustics/predict.ts';
import type { Prediction } from '#src/acoustics/prediction.ts';
import { cavity, fibre, leaf, sheet } from '../published/reference-constructions.ts';
import { isolated } from './fixtures.ts';

/** What the trade counts on; common practice, no published source. */
describe.each(['cellular-concrete', 'gypsum-concrete'])(
  'common practice: 38 mm of %s on an insulated joist floor',
  (key) => {
    const hung = cavity({
      support: 'resilient-channel',
      supportLineSpacing_m: 0.61,
      fill: [fibre('glass-fibre', 0.15)],
    });
    const deck = sheet('plywood', 0.0159);
    const ceiling = leaf([sheet('gypsum-board', 0.0159)]);
    const topped = leaf([sheet(key, 0.038), deck]);
    const bare = predict(isolated(leaf([deck]), hung, ceiling));
    const gained = predict(isolated(topped, hung, ceiling));
    const direct = predict(isolated(topped, cavity(), ceiling));
    const difference = (a: Prediction, b: Prediction, low: number, high: number) =>
      a.bands_Hz.flatMap((f, i) => (f >= low && f <= high ? [a.R_dB[i]! - b.R_dB[i]!] : []));

    it('gains 10 dB or more on average from 63 to 160 Hz', () => {
      const gains = difference(gained, bare, 63, 160);
      expect(gains.reduce((sum, g) => sum + g, 0) / gains.length).toBeGreaterThanOrEqual(10);
    });

    it('gains 13 dB or more at 500 Hz', () => {
      expect(Math.min(...difference(gained, bare, 500, 500))).toBeGreaterThanOrEqual(13);
    });

    it('gains 20 dB or more in every band from 2 kHz', () => {
      expect(Math.min(...difference(gained, bare, 2000, 5000))).toBeGreaterThanOrEqual(20);
    });

    it('gains no less than 10 dB in any band between', () => {
      expect(Math.min(...difference(gained, bare, 63, 2000))).toBeGreaterThanOrEqual(10);
    });

    it('loses 3 dB or more in every band from 100 Hz with the board screwed direct and the cavity empty', () => {
      expect(Math.min(...difference(gained, direct, 100, 5000))).toBeGreaterThanOrEqual(3);
    });
  },
);
