/** How the paths of the sound are told apart: name, dash of the line, hatch of the area. Never by colour alone. */
import type { PathName } from '#src/acoustics/prediction.ts';

export interface PathMark {
  readonly label: string;
  /** What the sound does, for a sentence. */
  readonly description: string;
  readonly dash: string;
}

export const PATH_NAMES: readonly PathName[] = ['direct', 'supports', 'flanking', 'leaks'];

export const PATH_MARKS: Readonly<Record<PathName, PathMark>> = {
  direct: { label: 'direct', description: 'straight through leaves and cavities', dash: '6 2' },
  supports: { label: 'supports', description: 'through joists, channels, clips or screws', dash: '2 2' },
  flanking: { label: 'flanking', description: 'around by the walls', dash: '8 2 2 2' },
  leaks: { label: 'leaks', description: 'through gaps and holes', dash: '1 3' },
};
