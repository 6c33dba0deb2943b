/**
 * What the promise gives, unless the signal is aborted first: then its reason, at once. The work behind the promise goes on.
 *
 * @throws the signal's reason, or what the promise rejects with.
 */
export function orAborted<T>(promise: Promise<T>, signal: AbortSignal): Promise<T> {
  return new Promise((resolve, reject) => {
    const onAbort = () => reject(signal.reason);
    promise.then(resolve, reject).finally(() => signal.removeEventListener('abort', onAbort));
    if (signal.aborted) onAbort();
    else signal.addEventListener('abort', onAbort, { once: true });
  });
}
