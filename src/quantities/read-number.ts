/** A number at the start of a text, or why there is none. */
export type NumberReading =
  | { readonly ok: true; readonly value: number; readonly length: number }
  | {
      readonly ok: false;
      readonly problem: string;
      readonly at: number;
      /** A number that would do, where a quantity of the kind would not show what is meant. */
      readonly example?: string;
    };

const VULGAR_FRACTIONS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

const WITH_VULGAR = new RegExp(`^(?:(\\d+)(?:\\s*-\\s*|\\s*))?([${Object.keys(VULGAR_FRACTIONS).join('')}])`);
const WITH_FRACTION = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\s*[/⁄]\s*(\d+)(?![.,\d])/;
/** Groups of three set apart by blanks (ordinary, no-break, thin, narrow), then a decimal part; or digits and separators. */
const DECIMAL = /^(?:\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?!\d)(?:[.,]\d+)?|[.,]?\d[\d.,]*)(?:e[+-]?\d+)?/i;

/**
 * Reads whole, decimal, fractional and mixed numbers: 38, 0.5, 0,5, 1 760, 1e6, 3/8, 1 1/2, 1-1/2, 1½; no sign.
 *
 * A comma is a decimal one unless it could as well set thousands apart (1,760): that is refused. Both separators in one
 * number, or one of them repeated, are unmistakable (1,234.5 and 1.234,5 and 1,234,567).
 */
export function readNumber(text: string): NumberReading {
  const vulgar = WITH_VULGAR.exec(text);
  if (vulgar) {
    const [all, whole, fraction = ''] = vulgar;
    return { ok: true, value: Number(whole ?? 0) + VULGAR_FRACTIONS[fraction]!, length: all.length };
  }
  const mixed = WITH_FRACTION.exec(text);
  if (mixed) return readFraction(mixed);
  const decimal = DECIMAL.exec(text);
  if (!decimal) return { ok: false, problem: 'a number', at: 0 };
  return readDecimal(decimal[0]);
}

function readFraction([all, whole, numerator, denominator]: RegExpExecArray): NumberReading {
  const at = all.indexOf(`${numerator}`, whole?.length ?? 0);
  if (Number(denominator) === 0)
    return { ok: false, problem: 'a fraction that does not divide by 0', at, example: '1/2' };
  if (whole !== undefined && Number(numerator) >= Number(denominator)) {
    return { ok: false, problem: 'a fraction below 1 after the whole number', at, example: '1 1/2' };
  }
  return { ok: true, value: Number(whole ?? 0) + Number(numerator) / Number(denominator), length: all.length };
}

function readDecimal(token: string): NumberReading {
  const [digits = '', exponent = ''] = token.replace(/\s/g, '').split(/(?=e)/i);
  const plain = plainDecimal(digits);
  if (plain === 'ambiguous') {
    const asDecimal = digits.replace(',', '.');
    const asThousands = digits.replace(',', '');
    return { ok: false, problem: `an unmistakable number (${asThousands} or ${asDecimal}?)`, at: 0 };
  }
  const value = Number(plain + exponent);
  if (plain === 'malformed' || !Number.isFinite(value)) return { ok: false, problem: 'a number', at: 0 };
  return { ok: true, value, length: token.length };
}

/** Digits with a decimal point, or why not. */
function plainDecimal(digits: string): string {
  const points = digits.split('.').length - 1;
  const commas = digits.split(',').length - 1;
  if (points + commas === 0) return digits;
  if (points === 1 && commas === 0) return digits;
  if (points === 0 && commas === 1) {
    if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) return 'ambiguous';
    return /\d$/.test(digits) ? digits.replace(',', '.') : 'malformed';
  }
  if (/^\d{1,3}(?:,\d{3})+(?:\.\d*)?$/.test(digits)) return digits.replaceAll(',', '');
  if (/^\d{1,3}(?:\.\d{3})+(?:,\d+)?$/.test(digits)) return digits.replaceAll('.', '').replace(',', '.');
  return 'malformed';
}
