import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { joistMiddles_m } from '#cells/stack/section/joist-shapes.ts';
import type { Box, Line, Part, Section } from '#cells/stack/section/section.ts';
import { sectionHeight_m, sectionOf, sectionWidth_m } from '#cells/stack/section/section-of.ts';
import {
  type Cavity,
  type Construction,
  JOIST_KINDS,
  type Leaf,
  type Mat,
  type Sheet,
  SUPPORT_KINDS,
} from '#src/acoustics/construction.ts';
import { cavityDepth_m } from '#src/acoustics/normalise-construction.ts';

const WIDTH_m = 0.6;

function sheet(name: string, thickness_m: number, form: Sheet['form'] = 'board'): Sheet {
  return {
    name,
    thickness_m,
    form,
    density_kg_m3: 700,
    youngsModulus_Pa: 2e9,
    poissonRatio: 0.3,
    lossFactor: 0.03,
  };
}

const leaf = (...sheets: Sheet[]): Leaf => ({ kind: 'leaf', contact: 'loose', sheets });
const DECK = leaf(sheet('deck', 0.018));
const CEILING = leaf(sheet('board', 0.0159), sheet('board', 0.0127));
const MAT: Mat = { kind: 'mat', name: 'mat', thickness_m: 0.01, dynamicStiffness_N_m3: 2e7, lossFactor: 0.1 };

function cavity(changes: Partial<Cavity> = {}): Cavity {
  return {
    kind: 'cavity',
    joists: 'solid-timber',
    depth_m: 0.235,
    joistWidth_m: 0.038,
    joistSpacing_m: 0.4,
    support: 'direct',
    fill: [{ name: 'fibre', thickness_m: 0.09, flowResistivity_Pa_s_m2: 8000, density_kg_m3: 14 }],
    ...changes,
  };
}

function construction(...layers: Construction['layers']): Construction {
  return { length_m: 4, width_m: 2.5, layers };
}

function drawn(floor: Construction): Section {
  return sectionOf(floor, { width_m: WIDTH_m, hatchOf: () => 'open' });
}

const boxes = ({ shapes }: Section, part: Part) => shapes.filter((s): s is Box => s.shape === 'box' && s.part === part);
const lines = ({ shapes }: Section, part: Part) =>
  shapes.filter((s): s is Line => s.shape === 'line' && s.part === part);
const middle = ({ x_m, width_m }: Box) => x_m + width_m / 2;
const bottom = ({ y_m, height_m }: Box) => y_m + height_m;

describe('layers', () => {
  test('stand on each other from the top down at their thickness', () => {
    const section = drawn(construction(leaf(sheet('slab', 0.038, 'slab')), MAT, DECK));
    expect(section.shapes.map((s) => s.shape === 'box' && [s.part, s.y_m, s.height_m, s.width_m])).toEqual([
      ['sheet', 0, 0.038, WIDTH_m],
      ['mat', 0.038, 0.01, WIDTH_m],
      ['sheet', 0.048, 0.018, WIDTH_m],
    ]);
    expect(section.height_m).toBeCloseTo(0.066, 12);
  });

  test('a covering lies on top and pushes everything down', () => {
    const covering = { name: 'carpet', surfaceMass_kg_m2: 2, contactStiffness_N_m: 1e5, thickness_m: 0.008 };
    const section = drawn({ ...construction(DECK), covering });
    expect(boxes(section, 'covering')[0]).toMatchObject({ y_m: 0, height_m: 0.008 });
    expect(boxes(section, 'sheet')[0]).toMatchObject({ y_m: 0.008 });
  });

  test('a sheet of thickness 0 is not there, and what is there keeps its own index', () => {
    const section = drawn(construction(leaf(sheet('slab', 0), sheet('deck', 0.018)), cavity(), CEILING));
    expect(section.dimensions[0]).toMatchObject({ from_m: 0, to_m: 0.018, layer: 0, sheet: 1 });
  });

  test('a leaf without sheets takes its mat with it', () => {
    const section = drawn(construction(leaf(sheet('slab', 0)), MAT, DECK, cavity(), CEILING));
    expect(boxes(section, 'mat')).toEqual([]);
    expect(section.dimensions[0]).toMatchObject({ layer: 2, sheet: 0 });
    expect(section.dimensions.find((d) => d.of === 'cavity')).toMatchObject({ layer: 3 });
  });

  test('three leaves show both interlayers', () => {
    const section = drawn(
      construction(leaf(sheet('slab', 0.05, 'slab')), MAT, DECK, cavity({ support: 'clips' }), CEILING),
    );
    expect(section.dimensions.map((d) => [d.of, d.layer])).toEqual([
      ['sheet', 0],
      ['mat', 1],
      ['sheet', 2],
      ['cavity', 3],
      ['support', 3],
      ['sheet', 4],
      ['sheet', 4],
    ]);
  });

  test('without any sheet there is no section', () => {
    expect(() => drawn(construction(leaf(sheet('none', 0))))).toThrow(RangeError);
  });
});

const CASES = JOIST_KINDS.flatMap((joists) => SUPPORT_KINDS.map((support) => [joists, support] as const));

describe.each(CASES)('%s, %s', (joists, support) => {
  const bay = cavity({ joists, support });
  const section = drawn(construction(DECK, bay, CEILING));
  const top_m = 0.018;
  const board_m = top_m + cavityDepth_m(bay);

  test('the chain of dimensions has no gap and ends at the height of the build-up', () => {
    section.dimensions.forEach((d, i) => {
      expect(d.from_m).toBeCloseTo(i ? section.dimensions[i - 1]!.to_m : 0, 12);
      expect(d.to_m).toBeGreaterThan(d.from_m);
    });
    expect(section.dimensions.at(-1)!.to_m).toBe(section.height_m);
    expect(sectionHeight_m(construction(DECK, bay, CEILING))).toBeCloseTo(section.height_m, 12);
    expect(section.height_m).toBeCloseTo(0.018 + cavityDepth_m(bay) + 0.0159 + 0.0127, 12);
  });

  test('nothing is drawn outside the build-up', () => {
    for (const shape of section.shapes) {
      const ys = shape.shape === 'box' ? [shape.y_m, bottom(shape)] : shape.points_m.map(([, y]) => y);
      for (const y of ys) {
        expect(y).toBeGreaterThanOrEqual(-1e-12);
        expect(y).toBeLessThanOrEqual(section.height_m + 1e-12);
      }
    }
  });

  test('fibre lies on the ceiling at its thickness', () => {
    const [fill] = boxes(section, 'fill');
    expect(fill!.height_m).toBe(0.09);
    expect(bottom(fill!)).toBeCloseTo(board_m, 12);
  });

  test('a second fill lies on the first', () => {
    const fill = [0.09, 0.06].map((thickness_m) => ({ ...bay.fill[0]!, thickness_m }));
    const [first, second] = boxes(drawn(construction(DECK, { ...bay, fill }, CEILING)), 'fill');
    expect(bottom(first!)).toBeCloseTo(board_m, 12);
    expect(bottom(second!)).toBeCloseTo(first!.y_m, 12);
    expect(second!.height_m).toBeCloseTo(0.06, 12);
  });

  test('joists hang from the deck at their spacing and are as deep as the cavity', () => {
    const solid = boxes(section, 'joist');
    const flanges = boxes(section, 'joist-flange');
    const steel = lines(section, 'joist');
    const count = { none: 0, 'solid-timber': 2, 'i-joist': 4, 'open-truss': 4, 'cold-formed-steel': 2 }[joists];
    expect(solid.length + flanges.length + steel.length).toBe(count);
    const reach = [
      ...[...solid, ...flanges].flatMap((b) => [b.y_m, bottom(b)]),
      ...steel.flatMap((l) => l.points_m.map(([, y]) => y)),
    ];
    if (count === 0) return;
    expect(Math.min(...reach)).toBeCloseTo(top_m, 12);
    expect(Math.max(...reach)).toBeCloseTo(top_m + 0.235, 12);
  });
});

describe('joists', () => {
  test('stand at their spacing with the middle of a bay in the middle', () => {
    const at = joistMiddles_m(0.4, 1.2);
    expect(at).toHaveLength(2);
    expect(at[0]).toBeCloseTo(0.4, 12);
    expect(at[1]).toBeCloseTo(0.8, 12);
  });

  test('are as wide as they are', () => {
    const section = drawn(construction(DECK, cavity({ joistWidth_m: 0.063 }), CEILING));
    for (const joist of boxes(section, 'joist')) expect(joist.width_m).toBe(0.063);
  });

  test('hold the deck by a screw each; a slab cast on them has none', () => {
    const upper = (section: Section) => lines(section, 'screw').filter((s) => s.points_m[0]![1] < 0.1);
    expect(upper(drawn(construction(DECK, cavity(), CEILING)))).toHaveLength(2);
    expect(upper(drawn(construction(leaf(sheet('slab', 0.1, 'slab')), cavity(), CEILING)))).toHaveLength(0);
  });
});

describe('supports', () => {
  const with_ = (changes: Partial<Cavity>) => drawn(construction(DECK, cavity(changes), CEILING));
  const joist_m = 0.018 + 0.235;

  test('boards screwed direct touch the joists, and a screw goes through both sheets into each', () => {
    const section = with_({ support: 'direct' });
    expect(boxes(section, 'sheet')[1]!.y_m).toBeCloseTo(joist_m, 12);
    const screws = lines(section, 'screw').filter((s) => s.points_m[1]![1] > joist_m);
    expect(screws).toHaveLength(2);
    for (const { points_m } of screws) {
      expect(points_m[0]![1]).toBeCloseTo(joist_m - 0.025, 12);
      expect(points_m[1]![1]).toBeCloseTo(section.height_m, 12);
    }
  });

  test('a channel fills the height between joists and boards: 12.7 mm unless told', () => {
    expect(boxes(with_({ support: 'resilient-channel' }), 'channel')[0]).toMatchObject({
      y_m: joist_m,
      width_m: WIDTH_m,
    });
    expect(boxes(with_({ support: 'resilient-channel' }), 'channel')[0]!.height_m).toBeCloseTo(0.0127, 12);
    const thicker = with_({ support: 'resilient-channel', supportHeight_m: 0.02 });
    expect(boxes(thicker, 'channel')[0]!.height_m).toBeCloseTo(0.02, 12);
  });

  test('no screw of a channel reaches through it into the joist above', () => {
    const section = with_({ support: 'resilient-channel' });
    const fromBelow = lines(section, 'screw').filter((s) => s.points_m[1]![1] > joist_m + 0.0127);
    expect(fromBelow.length).toBeGreaterThan(0);
    for (const { points_m } of fromBelow) expect(points_m[0]![1]).toBeGreaterThan(joist_m);
  });

  test('clips hang at joists, every third where joists are 0.4 m and clips 1.2 m apart', () => {
    const wide = sectionOf(construction(DECK, cavity({ support: 'clips', supportPointSpacing_m: 1.2 }), CEILING), {
      width_m: 2.8,
      hatchOf: () => 'open',
    });
    const at = boxes(wide, 'clip')
      .filter((b) => b.hatch === 'metal')
      .map(middle);
    expect(at).toHaveLength(2);
    expect(at[1]! - at[0]!).toBeCloseTo(1.2, 9);
    const joists = boxes(wide, 'joist').map(middle);
    for (const x of at) expect(Math.min(...joists.map((j) => Math.abs(j - x)))).toBeLessThan(1e-9);
  });

  test('a clip reaches from the joist into the furring channel that carries the boards', () => {
    const section = with_({ support: 'clips' });
    const [clip] = boxes(section, 'clip');
    const [furring] = boxes(section, 'furring');
    expect(clip!.y_m).toBeCloseTo(joist_m, 12);
    expect(bottom(clip!)).toBeGreaterThan(furring!.y_m);
    expect(bottom(furring!)).toBeCloseTo(joist_m + 0.041, 12);
  });

  test('rods and spring of a hanger join without a gap between joist and furring', () => {
    const section = with_({ support: 'hangers', supportHeight_m: 0.15 });
    const [upper, lower] = lines(section, 'hanger-rod');
    const [spring] = boxes(section, 'hanger-spring');
    const [furring] = boxes(section, 'furring');
    expect(upper!.points_m[0]![1]).toBeCloseTo(joist_m, 12);
    expect(upper!.points_m[1]![1]).toBeCloseTo(spring!.y_m, 12);
    expect(lower!.points_m[0]![1]).toBeCloseTo(bottom(spring!), 12);
    expect(lower!.points_m[1]![1]).toBeCloseTo(furring!.y_m, 12);
    expect(bottom(furring!)).toBeCloseTo(joist_m + 0.15, 12);
  });

  test('without joists a hanger spans the whole gap', () => {
    const section = with_({ joists: 'none', support: 'hangers' });
    expect(lines(section, 'hanger-rod')[0]!.points_m[0]![1]).toBeCloseTo(0.018, 12);
  });

  test('ceiling joists of their own rest on the boards, in the middle of the bays, and touch nothing above', () => {
    const section = with_({ support: 'separate-joists' });
    const own = boxes(section, 'ceiling-joist');
    expect(own.map(middle)).toEqual([WIDTH_m / 2]);
    expect(bottom(own[0]!)).toBeCloseTo(joist_m + 0.025, 12);
    expect(own[0]!.y_m).toBeGreaterThan(0.018);
    const joists = boxes(section, 'joist');
    for (const joist of joists) expect(Math.abs(middle(joist) - middle(own[0]!))).toBeGreaterThan(0.1);
  });
});

describe('the width of the picture', () => {
  test('shows two joists at any ordinary spacing', () => {
    for (const joistSpacing_m of [0.3, 0.406, 0.61, 0.8]) {
      const floor = construction(DECK, cavity({ joistSpacing_m }), CEILING);
      const width_m = sectionWidth_m([floor]);
      expect(joistMiddles_m(joistSpacing_m, width_m).length).toBeGreaterThanOrEqual(2);
    }
  });

  test('is the widest that any of the floors side by side asks for', () => {
    const narrow = construction(DECK, cavity({ joistSpacing_m: 0.4 }), CEILING);
    const wide = construction(DECK, cavity({ joistSpacing_m: 0.61 }), CEILING);
    expect(sectionWidth_m([narrow, wide])).toBeCloseTo(0.915, 12);
  });
});

test('whatever the numbers, fill stays in its cavity and dimensions run on without a gap', () => {
  const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...JOIST_KINDS),
      fc.constantFrom(...SUPPORT_KINDS),
      length(0, 0.6),
      length(0, 0.6),
      length(0, 0.2),
      length(0.05, 2),
      (joists, support, depth_m, fill_m, supportHeight_m, joistSpacing_m) => {
        const fill = [{ name: 'fibre', thickness_m: fill_m, flowResistivity_Pa_s_m2: 8000, density_kg_m3: 14 }];
        const bay = cavity({ joists, support, depth_m, supportHeight_m, joistSpacing_m, fill });
        const section = drawn(construction(DECK, bay, CEILING));
        for (const box of boxes(section, 'fill')) {
          expect(box.y_m).toBeGreaterThanOrEqual(0.018 - 1e-12);
          expect(bottom(box)).toBeCloseTo(0.018 + cavityDepth_m(bay), 9);
        }
        for (const box of section.shapes) {
          if (box.shape === 'box') expect(box.height_m).toBeGreaterThanOrEqual(0);
        }
        section.dimensions.forEach((d, i) => {
          if (i) expect(d.from_m).toBeCloseTo(section.dimensions[i - 1]!.to_m, 12);
        });
      },
    ),
  );
});
