/** A time in words, short: "14:02" today, "25 Nov, 14:02" before that, the year where it is another. */
export function dayWords(time_ms: number, now: Date, locale?: string): string {
  const time = new Date(time_ms);
  const clock = { hour: '2-digit', minute: '2-digit' } as const;
  if (time.toDateString() === now.toDateString()) return time.toLocaleTimeString(locale, clock);
  const day = { day: 'numeric', month: 'short', ...clock } as const;
  return time.toLocaleString(locale, time.getFullYear() === now.getFullYear() ? day : { ...day, year: 'numeric' });
}
