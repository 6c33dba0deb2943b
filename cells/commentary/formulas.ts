/**
 * The formulas that a text may show, those the engine itself computes with, as MathML. A text names one by key; nobody
 * types a formula language.
 */
import { html, mathml, type TemplateResult } from 'lit';

export interface Formula {
  readonly key: string;
  readonly label: string;
  /** Where it comes from. */
  readonly source: string;
  readonly math: TemplateResult<1>;
}

// Parts of formulas are `mathml`: parsed as `html` they would be unknown elements of no size.
const rho0c0 = mathml`<msub><mi>ρ</mi><mn>0</mn></msub><msub><mi>c</mi><mn>0</mn></msub>`;
const mass = mathml`<msup><mi>m</mi><mo>′</mo></msup>`;
const stiffness = mathml`<msup><mi>s</mi><mo>′</mo></msup>`;
const f0 = mathml`<msub><mi>f</mi><mn>0</mn></msub>`;
const oneOver2Pi = mathml`<mfrac><mn>1</mn><mrow><mn>2</mn><mi>π</mi></mrow></mfrac>`;
const lg = mathml`<mi>lg</mi><mspace width="0.17em"></mspace>`;
const m1 = mathml`<msubsup><mi>m</mi><mn>1</mn><mo>′</mo></msubsup>`;
const m2 = mathml`<msubsup><mi>m</mi><mn>2</mn><mo>′</mo></msubsup>`;

export const FORMULAS: readonly Formula[] = [
  {
    key: 'mass-law',
    label: 'mass law, sound straight on',
    source: 'London, J. Research NBS 42 (1949); from memory, unverified',
    math: html`<math display="block">
      <msub><mi>R</mi><mn>0</mn></msub><mo>=</mo><mn>20</mn>${lg}<mfrac
        ><mrow><mi>π</mi><mi>f</mi>${mass}</mrow><mrow>${rho0c0}</mrow></mfrac
      >
    </math>`,
  },
  {
    key: 'mass-spring-mass',
    label: 'two masses on a spring',
    source: 'free vibration of two masses and a massless spring',
    math: html`<math display="block">
      ${f0}<mo>=</mo>${oneOver2Pi}<msqrt
        ><mrow
          >${stiffness}<mrow
            ><mo>(</mo><mfrac><mn>1</mn>${m1}</mfrac><mo>+</mo><mfrac><mn>1</mn>${m2}</mfrac><mo>)</mo></mrow
          ></mrow
        ></msqrt
      >
    </math>`,
  },
  {
    key: 'air-spring',
    label: 'stiffness of the air in a cavity',
    source: 'adiabatic compression of a layer of air of depth d',
    math: html`<math display="block">
      ${stiffness}<mo>=</mo><mfrac
        ><mrow><msub><mi>ρ</mi><mn>0</mn></msub><msubsup><mi>c</mi><mn>0</mn><mn>2</mn></msubsup></mrow
        ><mi>d</mi></mfrac
      >
    </math>`,
  },
  {
    key: 'critical-frequency',
    label: 'critical frequency of a leaf',
    source: 'bending waves of a thin plate as long as sound waves in air',
    math: html`<math display="block">
      <msub><mi>f</mi><mi>c</mi></msub><mo>=</mo><mfrac
        ><msubsup><mi>c</mi><mn>0</mn><mn>2</mn></msubsup><mrow><mn>2</mn><mi>π</mi></mrow></mfrac
      ><msqrt><mfrac>${mass}<mi>B</mi></mfrac></msqrt>
    </math>`,
  },
  {
    key: 'bending-stiffness',
    label: 'bending stiffness of a sheet',
    source: 'plate theory, per width',
    math: html`<math display="block">
      <mi>B</mi><mo>=</mo><mfrac
        ><mrow><mi>E</mi><msup><mi>h</mi><mn>3</mn></msup></mrow
        ><mrow
          ><mn>12</mn><mo>(</mo><mn>1</mn><mo>−</mo><msup><mi>ν</mi><mn>2</mn></msup><mo>)</mo></mrow
        ></mfrac
      >
    </math>`,
  },
  {
    key: 'floating-floor',
    label: 'gain of a floating floor',
    source: 'ISO 12354-2; 30 for cement screeds, 40 for dry and asphalt ones',
    math: html`<math display="block">
      <mi mathvariant="normal">Δ</mi><mi>L</mi><mo>=</mo><mn>30</mn>${lg}<mfrac><mi>f</mi>${f0}</mfrac
      ><mo>,</mo><mspace width="1em"></mspace>${f0}<mo>=</mo>${oneOver2Pi}<msqrt
        ><mfrac>${stiffness}${m1}</mfrac></msqrt
      >
    </math>`,
  },
  {
    key: 'transmission-loss',
    label: 'transmission loss',
    source: 'definition',
    math: html`<math display="block">
      <mi>R</mi><mo>=</mo><mn>10</mn>${lg}<mfrac
        ><msub><mi>W</mi><mtext>incident</mtext></msub><msub><mi>W</mi><mtext>transmitted</mtext></msub></mfrac
      >
    </math>`,
  },
  {
    key: 'rw',
    label: 'fit of the reference contour for Rw',
    source: 'ISO 717-1:2020, clause 4.4',
    math: html`<math display="block">
      <msub><mi>R</mi><mi>w</mi></msub><mo>=</mo><msub><mi>K</mi><mn>500</mn></msub
      ><mtext>&nbsp;for the highest&nbsp;</mtext><mi>K</mi><mtext>&nbsp;with&nbsp;</mtext><munder><mo>∑</mo><mi>i</mi></munder><mi>max</mi><mo>(</mo><msub
        ><mi>K</mi><mi>i</mi></msub
      ><mo>−</mo><msub><mi>R</mi><mi>i</mi></msub><mo>,</mo><mn>0</mn><mo>)</mo><mo>≤</mo><mn>32.0</mn
      ><mtext>&nbsp;dB</mtext>
    </math>`,
  },
];

export function formula(key: string): Formula | undefined {
  return FORMULAS.find((f) => f.key === key);
}
