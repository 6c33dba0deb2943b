import { columns, signedTenths, signedWhole } from './text-columns.ts';
import type { TitledStack } from './titled-stack.ts';

/** The gains of every scenario beside each other: single numbers, then band by band, scenarios as columns by number. */
export function gainsBlock(stacks: readonly TitledStack[]): readonly string[] {
  const gaining = stacks.flatMap(({ title, stack: { gain, bands_Hz, ratingNames } }) =>
    gain ? [{ title, gain, bands_Hz, ratingNames }] : [],
  );
  const [first] = gaining;
  if (!first) return [];
  const { STC, OITC, Rw, IIC, Lnw } = first.ratingNames;
  const numbers = gaining.map(({ title, gain }, i) => [
    `${i + 1} ${title}`,
    ...[gain.STC, gain.OITC, gain.Rw, gain.IIC, gain.Lnw].map(signedWhole),
    signedTenths(gain.addedMass_kg_m2),
    signedWhole(Math.round(1000 * gain.addedHeight_m)),
  ]);
  const heads = gaining.flatMap((_, i) => [`R ${i + 1}`, `Ln ${i + 1}`]);
  const bands = first.bands_Hz.map((band_Hz, band) => [
    String(band_Hz),
    ...gaining.flatMap(({ gain }) => [signedTenths(gain.R_dB[band]), signedTenths(gain.Ln_dB[band])]),
  ]);
  const lines = [
    `Gains over "${first.gain.over}" (Ln: drop of the impact level):`,
    columns([['', STC, OITC, Rw, IIC, Lnw, 'kg/m²', 'mm'], ...numbers]),
    columns([['Hz', ...heads], ...bands]),
  ];
  return [lines.join('\n')];
}
