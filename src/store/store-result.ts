/** What the store answers: storage may fail at any time and with any value, so failure is data, never an exception. */
import type { Problem } from '#src/notebook/problem.ts';

export type StoreResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: StoreProblem };

export type StoreProblemKind =
  /** The browser gives no storage at all (private window, blocked, or closed under us). */
  | 'unavailable'
  | 'full'
  | 'missing'
  /** There is such a notebook already. */
  | 'exists'
  /** Somebody else saved in the meantime; nothing was written. */
  | 'conflict'
  /** A record that does not hold a sound notebook. It is kept as it is. */
  | 'damaged'
  | 'failed';

export interface StoreProblem {
  readonly kind: StoreProblemKind;
  /** One sentence for people. */
  readonly message: string;
  /** What is wrong with a damaged record. */
  readonly problems?: readonly Problem[];
}

export function succeeded<T>(value: T): StoreResult<T> {
  return { ok: true, value };
}

export function refused(kind: StoreProblemKind, message: string, problems?: readonly Problem[]): StoreResult<never> {
  return { ok: false, problem: { kind, message, ...(problems && { problems }) } };
}

/** Runs something that touches storage and turns whatever it throws, even null, into a result. */
export async function attempted<T>(work: () => Promise<StoreResult<T>>): Promise<StoreResult<T>> {
  try {
    return await work();
  } catch (error) {
    return { ok: false, problem: problemOf(error) };
  }
}

const KINDS: Readonly<Record<string, StoreProblemKind>> = {
  QuotaExceededError: 'full',
  InvalidStateError: 'unavailable',
  SecurityError: 'unavailable',
  NotAllowedError: 'unavailable',
  UnknownError: 'unavailable',
};

const SENTENCES: Readonly<Record<'full' | 'unavailable' | 'failed', string>> = {
  full: 'The browser has no room left for this notebook. Save it to a file.',
  unavailable: 'The browser gives this page no storage. Save the notebook to a file.',
  failed: 'The browser could not store this notebook. Save it to a file.',
};

function problemOf(error: unknown): StoreProblem {
  const name = textOf(error, 'name');
  const kind = (name && Object.hasOwn(KINDS, name) && KINDS[name]) || 'failed';
  const detail = textOf(error, 'message') ?? (typeof error === 'string' ? error : undefined);
  const sentence = SENTENCES[kind as keyof typeof SENTENCES];
  return { kind, message: detail ? `${sentence} (${detail})` : sentence };
}

function textOf(error: unknown, key: 'name' | 'message'): string | undefined {
  if (typeof error !== 'object' || error === null) return undefined;
  const value: unknown = Reflect.get(error, key);
  return typeof value === 'string' && value !== '' ? value : undefined;
}
