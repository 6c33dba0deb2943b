/**
 * Where the numbers of the built-in materials come from, under the keys of `materials.ts`: every row has one, in words that
 * a stranger can check. Apart from the numbers, because a page computes without them.
 */

export type MaterialKind = 'sheet' | 'fibre' | 'mat' | 'covering';

const MEMORY = 'from memory, unverified';
const FITTED = 'stiffness and loss chosen by hand within the published range, on the reference rows';
const ASSUMED = 'assumed values of the usual order; no source';
const COVERED_SLAB = 'by what it takes of blows on concrete';
const FLOOR_COVERINGS = `DIN 4109 Beiblatt 1:1989, Table 18 (${MEMORY})`;

/** By the kind of material, then by its key. */
export const MATERIAL_SOURCES: Readonly<Record<MaterialKind, Readonly<Record<string, string>>>> = {
  sheet: {
    'gypsum-board': `density common practice; ${FITTED}`,
    'gypsum-board-fire-rated': `density: timber component catalogue (design value); stiffness as gypsum board for the same wave speed; ${FITTED}`,
    'gypsum-fibre-board': 'density: timber component catalogue (design value); stiffness assumed, of the usual order',
    'dry-screed': 'density: timber component catalogue (design value); stiffness assumed, of the usual order',
    'cement-board': 'common practice, no source; assumed values of the usual order',
    'magnesium-oxide-board': 'common practice, no source; assumed values of the usual order',
    plywood: 'density common practice; stiffness from fc·h 20 Hz·m: Long, Architectural Acoustics, 2006, Table 9.1',
    osb: `density: Hopkins, Sound Insulation, 2007, Table A2 (${MEMORY}); ${FITTED}`,
    'softwood-boards': `density: timber component catalogue (design value); ${FITTED}`,
    chipboard: `density, cL 2200 m/s: Hopkins, Sound Insulation, 2007, Table A2 (${MEMORY}); loss assumed`,
    'hardwood-flooring': 'oak, common practice, no source; stiffness of tongued strips nailed across a deck, assumed',
    'engineered-wood-flooring': 'common practice, no source; assumed values of the usual order',
    'cross-laminated-timber':
      'density 450–500: timber component catalogue; section of five crossed plies of 11 GPa timber, own estimate',
    chippings: 'density 1500–1800: timber component catalogue; loose grains: weight, hardly any stiffness, assumed',
    'ceramic-tile': 'common practice, no source; jointed tiles bend less stiffly than this',
    glass: `fc·h 12.7 Hz·m: Long, Architectural Acoustics, 2006, Table 9.1; total loss of a glazed pane assumed`,
    steel: 'fc·h 12.4 Hz·m: Long, Architectural Acoustics, 2006, Table 9.1; loss assumed',
    'hollow-core-slab': 'cores 40 % of the section, stiffness of webs and flanges as an equivalent plate, own estimate',
    'aerated-concrete': `cL 1900 m/s, loss 0.0125: Hopkins, Sound Insulation, 2007, Table A2 (${MEMORY})`,
    concrete: `EN 12354-1:2000 Annex B: cL 3500 m/s (${MEMORY}); internal loss 0.006 there, 0.01 here as its slabs need`,
    'cellular-concrete': `density 1680–1920 kg/m³ common practice, no source; ${FITTED}`,
    'gypsum-concrete': `density common practice, no source; ${FITTED}`,
    'cement-screed': `density common practice, no source; ${FITTED}`,
  },
  fibre: {
    'glass-fibre': 'density: Tarnow, JASA 108(5), 2000; flow resistivity common practice, no source',
    'mineral-wool': 'common practice, no source',
  },
  mat: {
    'mineral-wool-board-soft': 's′: timber component catalogue; loss assumed',
    'mineral-wool-board': 's′: timber component catalogue; loss assumed',
    'mineral-wool-board-stiff': 's′: timber component catalogue; loss assumed',
    'entangled-mat': ASSUMED,
    'rubber-mat': ASSUMED,
  },
  covering: {
    'carpet-on-pad': `hammer on carpet: ${ASSUMED}`,
    carpet: `stiffness ${COVERED_SLAB}: 8 mm pile carpet on foam, ΔLw 28 dB, ${FLOOR_COVERINGS}; mass assumed`,
    'sheet-vinyl': `stiffness ${COVERED_SLAB}: vinyl on felt or fleece, ΔLw 13 dB, ${FLOOR_COVERINGS}; mass assumed`,
    'vinyl-plank': `stiffness ${COVERED_SLAB}: vinyl on foam, ΔLw 16 dB, ${FLOOR_COVERINGS}; mass assumed`,
  },
};
