/** The ways to say what goes around a floor, with what each means in plain words. */
import { NAMED_FLANKING } from '#src/notebook/flanking-limits.ts';
import type { Choice, Flanking } from '#src/notebook/types.ts';

export const FLANKING_CHOICES: readonly (Choice & { readonly value: Flanking['kind'] })[] = [
  { value: 'none', label: 'none' },
  { value: 'well isolated', label: 'well isolated' },
  { value: 'ordinary', label: 'ordinary' },
  { value: 'weak', label: 'weak' },
  { value: 'own', label: 'own limit' },
  { value: 'by the walls', label: 'by the walls' },
];

const LIMIT_ONLY = 'A limit holds for airborne sound only; impact sound then has no way around.';

function assumed(kind: keyof typeof NAMED_FLANKING, walls: string): string {
  const { R500_dB, slope_dB_per_octave } = NAMED_FLANKING[kind];
  return `${walls} However good the floor, its transmission loss stays below ${R500_dB} dB at 500 Hz and ${slope_dB_per_octave} dB more in each octave above. That value is assumed, not measured. ${LIMIT_ONLY}`;
}

export const FLANKING_WORDS: Readonly<Record<Flanking['kind'], string>> = {
  none: 'All sound goes through the floor, as in a laboratory whose walls let nothing past. No building is like that: very good floors come out too good. Use it to study the floor alone.',
  'well isolated': assumed('well isolated', 'The walls are heavy or lined, and parted from the floor.'),
  ordinary: assumed('ordinary', 'The walls stand as they usually do and run past the floor.'),
  weak: assumed('weak', 'Light walls run through, or the floor hangs on what carries sound well.'),
  own: `A limit that you know, from a measurement for instance. ${LIMIT_ONLY}`,
  'by the walls':
    'Every wall beside the floor by itself, with the simplified method of ISO 12354: sound goes from wall to wall past the floor, from the wall above into the floor, and from the floor into the wall below; footsteps take the last way too. The method was made for heavy walls and slabs, where it is good to about 2 dB. With joist floors take it as a rough estimate.',
};
