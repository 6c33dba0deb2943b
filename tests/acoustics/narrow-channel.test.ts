import { describe, expect, it } from 'vitest';
import { ROOM_AIR } from '#src/acoustics/air.ts';
import { type ChannelShape, NarrowChannel } from '#src/acoustics/narrow-channel.ts';

const { viscosity_Pa_s, density_kg_m3, soundSpeed_m_s, heatRatio, prandtlNumber } = ROOM_AIR;

function channelAt(shape: ChannelShape, width_m: number, f_Hz: number): NarrowChannel {
  const channel = new NarrowChannel(shape, width_m, ROOM_AIR);
  channel.prepare(f_Hz);
  return channel;
}

type Complex = readonly [re: number, im: number];
const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const over = (x: Complex, [c, d]: Complex): Complex => times(x, [c / (c * c + d * d), -d / (c * c + d * d)]);

/** tanh y / y for y = t(1 + j). */
function meanBetweenPlanes(t: number): Complex {
  const size = Math.cosh(2 * t) + Math.cos(2 * t);
  return over([Math.sinh(2 * t) / size, Math.sin(2 * t) / size], [t, t]);
}

/** 2 I1(y)/(y I0(y)) for y² = jY by the power series of both (Abramowitz & Stegun, 1964, 9.6.10). */
function meanInTube(Y: number): Complex {
  let term: Complex = [1, 0];
  let [i0, i1]: [Complex, Complex] = [
    [1, 0],
    [1, 0],
  ];
  for (let n = 1; n < 60; n++) {
    term = times(term, [0, Y / 4 / (n * n)]);
    i0 = [i0[0] + term[0], i0[1] + term[1]];
    i1 = [i1[0] + term[0] / (n + 1), i1[1] + term[1] / (n + 1)];
  }
  return over(i1, i0);
}

describe('air in a narrow channel', () => {
  it.each([0.02, 0.05, 0.1, 0.2, 0.5, 1, 3])('has the closed form’s density and compressibility: %d mm', (width_mm) => {
    const f_Hz = 100;
    const h = width_mm / 2000;
    const Y = (2 * Math.PI * f_Hz * density_kg_m3 * h * h) / viscosity_Pa_s;
    const meanOf: Record<ChannelShape, (Y: number) => Complex> = {
      slit: (y2) => meanBetweenPlanes(Math.sqrt(y2 / 2)),
      tube: meanInTube,
    };
    for (const shape of ['slit', 'tube'] as const) {
      const channel = channelAt(shape, width_mm / 1000, f_Hz);
      const [re, im] = meanOf[shape](Y);
      const density = over([1, 0], [1 - re, -im]);
      expect(channel.densityRe / density[0]).toBeCloseTo(1, 3);
      expect(Math.abs(channel.densityIm / density[1] - 1)).toBeLessThan(0.003);
      const [warmRe, warmIm] = meanOf[shape](prandtlNumber * Y);
      expect(channel.compressibilityRe).toBeCloseTo(1 + (heatRatio - 1) * warmRe, 3);
      expect(channel.compressibilityIm).toBeCloseTo((heatRatio - 1) * warmIm, 3);
    }
  });

  it.each([
    // Poiseuille flow: 12 η/w² between planes, 32 η/D² in a tube; its mass is 6/5 and 4/3 of the air's (textbook).
    ['slit', 12, 6 / 5],
    ['tube', 32, 4 / 3],
  ] as const)('of a very narrow %s resists as steady flow, %d η/w², and is isothermal', (shape, factor, mass) => {
    for (const width_m of [1e-9, 1e-7, 1e-5]) {
      const { densityRe, densityIm, compressibilityRe } = channelAt(shape, width_m, 50);
      const resistivity = -densityIm * 2 * Math.PI * 50 * density_kg_m3;
      expect((resistivity * width_m ** 2) / viscosity_Pa_s).toBeCloseTo(factor, 3);
      expect(densityRe).toBeCloseTo(mass, 2);
      expect(compressibilityRe).toBeCloseTo(heatRatio, 3);
    }
  });

  it('of a wide tube loses 2.93·10⁻⁵ √f/a Np/m (Kinsler et al., Fundamentals of Acoustics; from memory), within 5 %', () => {
    for (const [radius_m, f_Hz] of [
      [0.01, 500],
      [0.03, 2000],
    ] as const) {
      const { densityRe, densityIm, compressibilityRe, compressibilityIm } = channelAt('tube', 2 * radius_m, f_Hz);
      const [re, im] = times([densityRe, densityIm], [compressibilityRe, compressibilityIm]);
      const loss_Np_m = ((2 * Math.PI * f_Hz) / soundSpeed_m_s) * Math.sqrt((Math.hypot(re, im) - re) / 2);
      expect(loss_Np_m / ((2.93e-5 * Math.sqrt(f_Hz)) / radius_m)).toBeCloseTo(1, 1);
    }
  });
});
