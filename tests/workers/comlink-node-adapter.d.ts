/** The package ships no types for its endpoint on Node threads. */
declare module 'comlink/dist/esm/node-adapter.mjs' {
  import type { MessagePort, Worker } from 'node:worker_threads';
  import type { Endpoint } from 'comlink';

  export default function nodeEndpoint(port: Worker | MessagePort | null): Endpoint;
}
