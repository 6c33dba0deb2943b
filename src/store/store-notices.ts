/** What tabs tell each other about stored notebooks, so that lists and onlookers stay current. */
export type StoreNotice =
  | { readonly kind: 'saved'; readonly id: string; readonly savedAt_ms: number }
  | { readonly kind: 'removed'; readonly id: string }
  | { readonly kind: 'restored'; readonly id: string };

export interface StoreNotices {
  readonly tell: (notice: StoreNotice) => void;
  readonly close: () => void;
}

const CHANNEL = 'slab-and-spring';
const KINDS: readonly unknown[] = ['saved', 'removed', 'restored'];

/** Hears the other tabs, never itself. Where there is no such channel, nobody is told and nothing is heard. */
export function storeNotices(hear: (notice: StoreNotice) => void, channelName = CHANNEL): StoreNotices {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => {}, close: () => {} };
  const channel = new BroadcastChannel(channelName);
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (isNotice(data)) hear(data);
  };
  return { tell: (notice) => channel.postMessage(notice), close: () => channel.close() };
}

/** A tab with an older or newer version of the page may say something else. */
function isNotice(data: unknown): data is StoreNotice {
  if (typeof data !== 'object' || data === null) return false;
  const { kind, id } = data as Record<string, unknown>;
  return typeof id === 'string' && KINDS.includes(kind);
}
