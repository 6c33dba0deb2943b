/**
 * What a rating is called once sound that goes around by the walls is in its bands: ASTM E336 and E1007, ISO 16283-1 and -2.
 * OITC has no such name in them.
 */
const APPARENT_NAMES: Readonly<Record<string, string>> = {
  STC: 'ASTC',
  Rw: 'R′w',
  OITC: 'OITC with walls',
  IIC: 'AIIC',
  'Ln,w': 'L′n,w',
};

/** "R′w + C50–5000" for "Rw + C50–5000": a label begins with the rating's name. Terms such as C keep theirs. */
export function apparentName(label: string): string {
  return label.replace(/^(?:STC|Rw|OITC|IIC|Ln,w)(?![\w,])/, (name) => APPARENT_NAMES[name]!);
}
