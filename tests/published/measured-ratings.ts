/**
 * Laboratory single-number results (ASTM E90/E492, or assessed Rw and Ln,w) for described floors.
 *
 * T: accredited laboratory test report, read on its cover page; sponsors left out. W: A. C. C. Warnock, "Cast-in-place
 * concrete slabs" (representative values, about 2300 kg/m³), read. A: assessed catalogue values of timber components,
 * layer by layer, read (Rw, Ln,w).
 */
export interface MeasuredRatings {
  readonly source: 'T' | 'W' | 'A';
  readonly description: string;
  readonly STC?: number;
  readonly IIC?: number;
  readonly Rw?: number;
  readonly Lnw?: number;
}

export const MEASURED_RATINGS = {
  t1: {
    source: 'T',
    description:
      'joists 38×235 mm 406 oc; 15.9 mm plywood + 12.7 mm underlayment + sheet vinyl; 152 mm glass fibre; clips 1219 mm oc, furring 610 mm oc; 2 × 15.9 mm fire-rated gypsum board',
    STC: 57,
    IIC: 52,
  },
  t2: {
    source: 'T',
    description:
      'cold-formed steel joists 254 mm; 20 mm cement board; rock wool 64 kg/m³; furring channel screwed direct; 15.9 mm gypsum board',
    STC: 49,
    IIC: 31,
  },
  t3: {
    source: 'T',
    description:
      'cold-formed steel truss 305 mm; 18.7 mm magnesium-oxide board; 89 mm mineral wool; 12.7 mm resilient channel; 15.9 mm gypsum board',
    STC: 54,
    IIC: 37,
  },
  t4: {
    source: 'T',
    description:
      'I-joists 302 mm; 18.8 mm OSB; 25.4 mm gypsum concrete on 6.4 mm entangled mat; plank finish; 89 mm glass fibre; clips 610 × 1219 mm; 2 × 15.9 mm gypsum board',
    STC: 62,
    IIC: 61,
  },
  t5: { source: 'T', description: '152 mm slab, 12 mm engineered wood on 3 mm rubber', STC: 50, IIC: 55 },
  t6: { source: 'T', description: '152 mm slab, 12 mm engineered wood on 6 mm rubber', STC: 50, IIC: 56 },
  t7: { source: 'T', description: '152 mm slab, 7 mm ceramic tile on 5 mm rubber', STC: 54, IIC: 50 },
  c75: { source: 'W', description: '75 mm concrete slab', STC: 42 },
  c100: { source: 'W', description: '100 mm concrete slab', STC: 47 },
  c125: { source: 'W', description: '125 mm concrete slab', STC: 50 },
  c150: { source: 'W', description: '150 mm concrete slab', STC: 53 },
  c170: { source: 'W', description: '170 mm concrete slab', STC: 55 },
  c200: { source: 'W', description: '200 mm concrete slab', STC: 58 },
  a1: {
    source: 'A',
    description: '60 mm cement screed | 30 mm board s′ 10 MN/m³ | 100 mm chippings | 160 mm cross-laminated timber',
    Rw: 74,
    Lnw: 45,
  },
  a2: {
    source: 'A',
    description: '60 mm cement screed | 40 mm board s′ 6 MN/m³ | 80 mm chippings | 160 mm cross-laminated timber',
    Rw: 74,
    Lnw: 42,
  },
  a3: {
    source: 'A',
    description: '25 mm dry screed | 30 mm board s′ 40 MN/m³ | 60 mm bonded fill | 140 mm cross-laminated timber',
    Rw: 62,
    Lnw: 50,
  },
  a4: {
    source: 'A',
    description:
      '25 mm gypsum-fibre screed | 20 mm board s′ 50 MN/m³ | 60 mm loose fill | 140 mm cross-laminated timber',
    Rw: 55,
    Lnw: 64,
  },
} as const satisfies Record<string, MeasuredRatings>;
