/**
 * What each rating tells and which way is better, in words for who meets it for the first time. The bands are those of its
 * standard: ASTM E413, E989 and E1332, ISO 717-1 and -2.
 */
const MEANINGS: Readonly<Record<string, string>> = {
  stc: 'One number for how much sound in the air, speech above all, is kept back from 125 to 4000 Hz: more is quieter. What lies below 125 Hz, such as the bass of drums, does not count in it.',
  rw: 'One number for how much sound in the air is kept back from 100 to 3150 Hz: more is quieter. With C added it stands for the noise of living, with Ctr for traffic and for music with much bass.',
  'c50-5000':
    'How much of the noise of living is kept back from 50 to 5000 Hz: more is quieter. The low bands count here.',
  'ctr50-5000':
    'How much of traffic, or of music with much bass, is kept back from 50 to 5000 Hz: more is quieter. The low bands, where floors hold back least, pull it down.',
  oitc: 'By how much traffic on roads, on rails and in the air would be quieter behind it, A-weighted, from 80 to 4000 Hz: more is quieter. It was made for the outer walls of buildings.',
  iic: 'One number for how much of the hammering of a standard tapping machine is kept from the room below, from 100 to 3150 Hz: more is quieter. The thud of feet lies mostly below 100 Hz and does not count in it.',
  lnw: 'One number for how loud a standard tapping machine on the floor is in the room below, from 100 to 3150 Hz. With CI added all bands weigh alike, the low ones too.',
  'ci50-2500':
    'How loud a standard tapping machine is in the room below from 50 to 2500 Hz, so that some of the thud of feet counts.',
};

/** Undefined for rows that are no rating. */
export const ratingMeaning = (key: string): string | undefined => MEANINGS[key];
