import { describe, expect, it } from 'vitest';
import type { Construction, SupportKind } from '#src/acoustics/construction.ts';
import { withNumber } from '#src/acoustics/number-path.ts';
import { predict } from '#src/acoustics/predict.ts';
import { usualTolerance } from '#src/acoustics/usual-tolerances.ts';
import { studiedNumbers } from '#src/notebook/studied-numbers.ts';
import { cavity, covering, fibre, floor, leaf, sheet } from '../published/reference-constructions.ts';

const SUPPORTS: readonly SupportKind[] = ['direct', 'resilient-channel', 'clips', 'hangers', 'separate-joists'];
const joistFloor = (support: SupportKind, more: object = {}): Construction =>
  floor(
    leaf([sheet('osb', 0.018), sheet('cellular-concrete', 0)]),
    cavity({ support, fill: [fibre('glass-fibre', 0.1)], ...more }),
    leaf([sheet('gypsum-board', 0.0127)]),
  );
const paths = (construction: Construction) => studiedNumbers(construction).map((n) => n.path);

describe('the numbers of a floor that are studied', () => {
  it('are those of every layer and of the covering, but none of a sheet that is absent', () => {
    const found = paths({ ...joistFloor('clips'), covering: covering('carpet') });
    expect(found).toContain('layers/0/sheets/0/youngsModulus_Pa');
    expect(found).toContain('layers/1/fill/0/flowResistivity_Pa_s_m2');
    expect(found).toContain('covering/contactStiffness_N_m');
    expect(found.filter((p) => p.startsWith('layers/0/sheets/1'))).toEqual([]);
    expect(new Set(found).size).toBe(found.length);
  });

  it.each<[SupportKind, object]>([
    ...SUPPORTS.map((support): [SupportKind, object] => [support, {}]),
    ['direct', { joists: 'cold-formed-steel' }],
    ['hangers', { supportStiffness_N_m: 20_000 }],
    ['hangers', { hangerFrequency_Hz: 15 }],
  ])('hold what is usual for %s %j where it is not stated, and stating it changes nothing', (support, more) => {
    const construction = joistFloor(support, more);
    const bare = predict(construction);
    for (const { path, value } of studiedNumbers(construction)) {
      const stated = predict(withNumber(construction, path, value));
      for (const [i, R] of stated.R_dB.entries()) {
        expect(Math.abs(R - bare.R_dB[i]!), `${path} = ${value}`).toBeLessThan(1e-6);
        expect(Math.abs(stated.Ln_dB[i]! - bare.Ln_dB[i]!), `${path} = ${value}`).toBeLessThan(1e-6);
      }
    }
  });

  it('take the spring of a support by its stiffness, of hangers by their frequency, and what is stated as it is', () => {
    expect(paths(joistFloor('clips'))).toContain('layers/1/supportStiffness_N_m');
    expect(paths(joistFloor('hangers'))).toContain('layers/1/hangerFrequency_Hz');
    expect(paths(joistFloor('hangers'))).not.toContain('layers/1/supportStiffness_N_m');
    const stated = withNumber(joistFloor('hangers'), 'layers/1/supportStiffness_N_m', 3e5);
    expect(paths(stated)).not.toContain('layers/1/hangerFrequency_Hz');
    expect(paths(joistFloor('separate-joists')).filter((p) => p.includes('supportStiffness'))).toEqual([]);
  });

  it('are those of gaps too, but none of a gap that is closed', () => {
    const slit = { name: 'gap', width_m: 0.002, length_m: 4, depth_m: 0.3 };
    const leaks = [slit, { ...slit, width_m: 0 }, { name: 'pipe', width_m: 0.02, depth_m: 0 }];
    const ofLeaks = studiedNumbers({ ...joistFloor('clips'), leaks }).filter(({ path }) => path.startsWith('leaks/'));
    // Assumed, no source.
    expect(ofLeaks).toEqual([
      { path: 'leaks/0/width_m', value: 0.002, tolerance: 0.5 },
      { path: 'leaks/0/length_m', value: 4, tolerance: 0.1 },
      { path: 'leaks/0/depth_m', value: 0.3, tolerance: 0.1 },
      { path: 'leaks/2/width_m', value: 0.02, tolerance: 0.1 },
    ]);
  });

  it('have each a tolerance', () => {
    for (const { tolerance } of studiedNumbers(joistFloor('clips'))) expect(tolerance).toBeGreaterThan(0);
    expect(usualTolerance('thickness_m')).toBe(0.05);
    expect(() => usualTolerance('toString')).toThrow('name must be that of a number with a tolerance, got "toString"');
  });
});
