/**
 * Exact definitions behind every inch-pound unit, in SI.
 *
 * Source: NIST Special Publication 811, 2008 edition, Appendix B.8 (inch, foot, pound: exact since 1959; standard
 * acceleration of gravity: exact). Derived units are products of these, so they carry no rounding of their own.
 */
export const INCH_M = 0.0254;
export const FOOT_M = 12 * INCH_M;
export const POUND_KG = 0.45359237;
export const OUNCE_KG = POUND_KG / 16;
const STANDARD_GRAVITY_M_S2 = 9.80665;
export const POUND_FORCE_N = POUND_KG * STANDARD_GRAVITY_M_S2;
export const POUND_PER_SQUARE_INCH_PA = POUND_FORCE_N / INCH_M ** 2;
