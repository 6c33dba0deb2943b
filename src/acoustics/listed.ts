/** Words as a sentence takes them: "a, b and c", "a or b"; one by itself as it is. */
export function listed(words: readonly string[], last: 'and' | 'or' = 'and'): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}
