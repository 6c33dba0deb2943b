import { columns, signedTenths, whole } from './text-columns.ts';
import type { TitledStack } from './titled-stack.ts';

/** What lies on each floor, by itself on the standard slab: single numbers, then ΔL band by band, floors as columns by number. */
export function laidBlock(stacks: readonly TitledStack[]): readonly string[] {
  const laid = stacks.flatMap(({ title, stack: { improvement } }) => (improvement ? [{ title, improvement }] : []));
  const [first] = laid;
  if (!first) return [];
  const numbers = laid.map(({ title, improvement: { dLw, CIdelta, dLlin, dIIC, floatingResonance_Hz } }, i) => [
    `${i + 1} ${title}`,
    `${whole(dLw)}(${whole(CIdelta)})`,
    ...[dLlin, dIIC, floatingResonance_Hz && Math.round(floatingResonance_Hz)].map(whole),
  ]);
  const bands = first.improvement.bands_Hz.map((band_Hz, band) => [
    String(band_Hz),
    ...laid.map(({ improvement }) => signedTenths(improvement.dL_dB[band])),
  ]);
  const lines = [
    'What lies on the floor, by itself on a bare concrete slab of 140 mm (drop of its impact level):',
    columns([['', 'ΔLw(CI,Δ)', 'ΔLlin', 'ΔIIC', 'f0, Hz'], ...numbers]),
    columns([['Hz', ...laid.map((_, i) => `ΔL ${i + 1}`)], ...bands]),
  ];
  return [lines.join('\n')];
}
