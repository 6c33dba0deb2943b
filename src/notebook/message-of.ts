/** What there is to say about something caught: libraries and browsers also throw what is no Error. */
export function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
