import type { BandMechanism, NamedFrequency } from '#src/acoustics/prediction.ts';
import type { StackPrediction } from './predict-notebook.ts';
import { columns, tenths } from './text-columns.ts';

/** R and Ln with their paths, what rules each band, and the frequencies behind it. */
export function bandTable(stack: StackPrediction): string {
  const paths = Object.entries(stack.paths_dB);
  const impactPaths = Object.entries(stack.impactPaths_dB);
  const head = [
    ...['Hz', 'R', ...paths.map(([path]) => `R ${path}`)],
    ...['Ln', ...impactPaths.map(([path]) => `Ln ${path}`), 'R is ruled by', 'Ln is ruled by'],
  ];
  const rows = stack.bands_Hz.map((band_Hz, i) => [
    String(band_Hz),
    ...[stack.R_dB, ...paths.map(([, levels]) => levels)].map((levels) => tenths(levels[i])),
    ...[stack.Ln_dB, ...impactPaths.map(([, levels]) => levels)].map((levels) => tenths(levels[i])),
    ruleInWords(stack.mechanisms[i]!, 'lower'),
    ruleInWords(stack.impactMechanisms[i]!, 'higher'),
  ]);
  const notes = [
    ...frequencyLine('Resonances', stack.resonances_Hz),
    ...frequencyLine('Critical frequencies', stack.criticalFrequencies_Hz),
    ...modesLine(stack),
  ];
  return [columns([head, ...rows], 1), ...notes].join('\n');
}

/** "direct 97 %: mass-spring-mass, 63 Hz, 4 dB lower"; the other paths are mechanisms themselves. */
function ruleInWords(
  { path, share, mechanism, frequency_Hz, effect_dB }: BandMechanism,
  changed: 'lower' | 'higher',
): string {
  const part = `${path} ${Math.round(100 * share)} %`;
  if (path !== 'direct') return part;
  const behind = frequency_Hz === undefined ? '' : `, ${frequency_Hz.toFixed(0)} Hz`;
  const how = mechanism === 'hammer-contact' ? 'less force' : changed;
  return `${part}: ${mechanism}${behind}${effect_dB === undefined ? '' : `, ${effect_dB.toFixed(0)} dB ${how}`}`;
}

function frequencyLine(heading: string, frequencies: readonly NamedFrequency[]): readonly string[] {
  if (frequencies.length === 0) return [];
  return [`${heading}: ${frequencies.map((f) => `${f.frequency_Hz.toFixed(0)} Hz (${f.name})`).join(', ')}`];
}

function modesLine({ roomModes }: StackPrediction): readonly string[] {
  if (!roomModes || roomModes.meaning.every((m) => m === 'diffuse')) return [];
  const { room, diffuseFrom_Hz } = roomModes;
  const where = diffuseFrom_Hz === null ? 'In every band' : `Below ${diffuseFrom_Hz} Hz`;
  const sides = [room.length_m, room.width_m, room.height_m].map((side) => Number(side.toFixed(1))).join(' × ');
  return [
    `${where} a room of ${sides} m (sides assumed) has fewer than five modes in some band: what is heard depends on the place.`,
  ];
}
