/** Names and keys come from files of strangers: what would steer the terminal is shown as a mark instead. */
export function printable(text: string): string {
  return text.replace(/[^\P{Cc}\n\t]/gu, '\uFFFD');
}
