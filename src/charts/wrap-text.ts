/** Breaks a text into lines of at most `characters`, between words where there are any. */
export function wrapText(text: string, characters: number): string[] {
  const most = Math.max(1, Math.floor(characters));
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    const longer = line ? `${line} ${word}` : word;
    if (longer.length <= most) {
      line = longer;
      continue;
    }
    if (line) lines.push(line);
    line = word;
    while (line.length > most) {
      lines.push(line.slice(0, most));
      line = line.slice(most);
    }
  }
  if (line) lines.push(line);
  return lines;
}
