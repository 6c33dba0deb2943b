import fc from 'fast-check';
import {
  type Cavity,
  type Construction,
  type Interlayer,
  JOIST_KINDS,
  type Leaf,
  type Leak,
  SHEET_CONTACTS,
  SHEET_FORMS,
  type Sheet,
  SUPPORT_KINDS,
} from '#src/acoustics/construction.ts';

/** Losses above say nothing about any room. */
export const ENOUGH_dB = 110;

/** Steps between two limits. Numbers drawn as doubles would crowd around 0: they are uniform in their bits. */
const STEPS = 1_000_000;

/** A number uniform between two limits. */
export function uniform(least: number, most: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: STEPS }).map((step) => least + ((most - least) * step) / STEPS);
}

/** A number log-uniform between two positive limits. */
export function logUniform(least: number, most: number): fc.Arbitrary<number> {
  return uniform(Math.log(least), Math.log(most)).map((x) => Math.min(Math.max(Math.exp(x), least), most));
}

/** How far the generated floors go: 'real' ones could be built, 'accepted' ones are anything the engine takes. */
export type Reach = 'real' | 'accepted';

export function sheets(reach: Reach): fc.Arbitrary<Sheet> {
  const real = reach === 'real';
  const all: fc.Arbitrary<Sheet> = fc.record({
    name: fc.constant('sheet'),
    thickness_m: real ? logUniform(0.006, 0.1) : fc.oneof(fc.constant(0), logUniform(1e-4, 2)),
    density_kg_m3: real ? logUniform(300, 2500) : logUniform(5, 25000),
    youngsModulus_Pa: real ? logUniform(1e9, 3e10) : logUniform(1e5, 1.3e12),
    poissonRatio: uniform(0, real ? 0.35 : 0.49),
    lossFactor: real ? logUniform(0.01, 0.1) : logUniform(1e-4, 2),
    form: fc.constantFrom(...SHEET_FORMS),
    contactStiffness_N_m: real ? logUniform(1e6, 1e9) : logUniform(1, 1e12),
  });
  // A slab is rigid under a hammer.
  return all.map(({ contactStiffness_N_m, ...rest }) =>
    rest.form === 'slab' || contactStiffness_N_m === undefined ? rest : { ...rest, contactStiffness_N_m },
  );
}

export function leaves(reach: Reach): fc.Arbitrary<Leaf> {
  return fc.record({
    kind: fc.constant('leaf' as const),
    sheets: fc.array(sheets(reach), { minLength: 1, maxLength: 3 }),
    contact: fc.constantFrom(...SHEET_CONTACTS),
  });
}

export function interlayers(reach: Reach): fc.Arbitrary<Interlayer> {
  const real = reach === 'real';
  const mat = fc.record({
    kind: fc.constant('mat' as const),
    name: fc.constant('mat'),
    thickness_m: logUniform(0.003, 0.05),
    dynamicStiffness_N_m3: real ? logUniform(5e6, 2e8) : logUniform(1e3, 1e12),
    lossFactor: real ? logUniform(0.05, 0.3) : logUniform(1e-4, 2),
  });
  const fibre = fc.record({
    name: fc.constant('fibre'),
    thickness_m: logUniform(0.02, 0.3),
    flowResistivity_Pa_s_m2: real ? logUniform(3000, 4e4) : logUniform(50, 1e7),
    density_kg_m3: fc.constant(20),
  });
  const cavity: fc.Arbitrary<Cavity> = fc.record({
    kind: fc.constant('cavity' as const),
    joists: fc.constantFrom(...JOIST_KINDS),
    depth_m: real ? logUniform(0.04, 0.4) : logUniform(1e-5, 2),
    joistWidth_m: logUniform(0.03, 0.1),
    joistSpacing_m: real ? logUniform(0.3, 0.7) : logUniform(0.03, 20),
    support: fc.constantFrom(...SUPPORT_KINDS),
    fill: fc.array(fibre, { maxLength: 2 }),
  });
  return fc.oneof(mat, cavity);
}

export function floors(reach: Reach, mostLeaves = 3): fc.Arbitrary<Construction> {
  return fc
    .tuple(
      reach === 'real' ? logUniform(2, 8) : logUniform(0.3, 100),
      reach === 'real' ? logUniform(2, 8) : logUniform(0.3, 100),
      leaves(reach),
      fc.array(fc.tuple(interlayers(reach), leaves(reach)), { maxLength: mostLeaves - 1 }),
    )
    .map(([length_m, width_m, first, rest]) => ({
      length_m,
      width_m,
      layers: [first, ...rest.flat()],
    }))
    .filter(({ layers }) => layers.some((l) => l.kind === 'leaf' && l.sheets.some((s) => s.thickness_m > 0)));
}

/** A slit or a hole; 'real' ones are open, of accepted ones every number may be 0. */
export function leaks(reach: Reach): fc.Arbitrary<Leak> {
  const real = reach === 'real';
  const number = (usual: readonly [number, number], accepted: readonly [number, number]) =>
    real
      ? logUniform(...usual)
      : fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 9, arbitrary: logUniform(...accepted) });
  const depth_m = number([0.01, 1], [1e-4, 10]);
  const slit = fc.record({
    name: fc.constant('slit'),
    width_m: number([1e-4, 0.02], [1e-10, 10]),
    length_m: number([0.1, 10], [1e-10, 1000]),
    depth_m,
  });
  const hole = fc.record({ name: fc.constant('hole'), width_m: number([0.002, 0.3], [1e-10, 10]), depth_m });
  return fc.oneof(slit, hole);
}

/** Floors with one to three leaks. */
export function leakyFloors(reach: Reach, mostLeaves = 2): fc.Arbitrary<Construction> {
  return fc
    .tuple(floors(reach, mostLeaves), fc.array(leaks(reach), { minLength: 1, maxLength: 3 }))
    .map(([floor, through]) => ({ ...floor, leaks: through }));
}
