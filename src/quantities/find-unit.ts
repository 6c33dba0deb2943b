import { KINDS, kindOf, type QuantityKind, type Unit } from './kinds.ts';

/** No unit is longer, however it is spelled: what is, need not be looked up. */
const LONGEST_UNIT = 40;

/** One spelling for all: "lb / cu. ft" → "lb/cuft", "kg·m^-3" stays unknown, "kg/m^3" and "kg/m³" → "kg/m3". */
function plainUnit(text: string): string {
  return text
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/⁴/g, '4')
    .replace(/\^|\*\*/g, '')
    .replace(/\bper\b/gi, '/')
    .replace(/[⋅∙•*]/g, '·')
    .replace(/\.(?=[A-Za-z])/g, '·')
    .replace(/[.\s]/g, '')
    .replace(/(sq|cu)·/gi, '$1');
}

/** The unit of this kind that was typed, in whatever case is unmistakable. */
export function findUnit(text: string, kind: QuantityKind): Unit | undefined {
  if (text.length > LONGEST_UNIT) return undefined;
  const typed = plainUnit(text);
  const { units } = kindOf(kind);
  return (
    units.find((u) => spellingsOf(u).includes(typed)) ??
    units.find((u) => spellingsOf(u).some((s) => sameButForCase(s, typed)))
  );
}

/** The kind that a unit which does not fit belongs to, to say so in a message. */
export function kindOfUnit(text: string): string | undefined {
  const kinds = Object.keys(KINDS) as QuantityKind[];
  const found = kinds.find((kind) => text.trim() !== '' && findUnit(text, kind));
  return found && kindOf(found).name;
}

/** The unit that a capital letter would have made of it: "mPa" → MPa. */
export function unitInOtherCase(text: string, kind: QuantityKind): Unit | undefined {
  if (text.length > LONGEST_UNIT) return undefined;
  const typed = plainUnit(text).toLowerCase();
  return kindOf(kind).units.find((u) => spellingsOf(u).some((s) => s.toLowerCase() === typed));
}

function spellingsOf(unit: Unit): string[] {
  return [plainUnit(unit.symbol), ...unit.spellings];
}

/** Case is forgiven, but never milli read as mega. */
function sameButForCase(spelling: string, typed: string): boolean {
  return spelling.toLowerCase() === typed.toLowerCase() && !(spelling.startsWith('M') && typed.startsWith('m'));
}
