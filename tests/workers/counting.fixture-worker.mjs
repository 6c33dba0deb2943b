// A worker whose calls take as long, or end as badly, as a test asks.
import { parentPort } from 'node:worker_threads';
import { expose } from 'comlink';
import nodeEndpoint from 'comlink/dist/esm/node-adapter.mjs';

let calls = 0;

expose(
  {
    count: () => ++calls,
    /** @param {number} ms */
    busy(ms) {
      const end = Date.now() + ms;
      while (Date.now() < end);
      return ++calls;
    },
    refuse() {
      throw new RangeError('thickness_m must be > 0, got -1');
    },
    exit() {
      process.exit(3);
    },
    async crash() {
      setTimeout(() => {
        throw new Error('out of luck');
      });
      await new Promise(() => {});
    },
  },
  nodeEndpoint(parentPort),
);
