/** A map of bounded size that forgets what has not been read or written for longest. */
export class RecentCache<V> {
  readonly #entries = new Map<string, V>();
  readonly #limit: number;

  constructor(limit: number) {
    this.#limit = limit;
  }

  get(key: string): V | undefined {
    const value = this.#entries.get(key);
    if (value !== undefined) this.#touch(key, value);
    return value;
  }

  set(key: string, value: V): void {
    this.#touch(key, value);
    if (this.#entries.size > this.#limit) this.#entries.delete(this.#entries.keys().next().value!);
  }

  #touch(key: string, value: V): void {
    this.#entries.delete(key);
    this.#entries.set(key, value);
  }
}
