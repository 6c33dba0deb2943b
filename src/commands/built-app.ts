import { build, type PreviewServer, preview } from 'vite';

/** A folder of its own, so that looking and measuring never replace what `npm start` serves. */
const OUT_DIR = 'node_modules/.cache/slab-and-spring/looked-at';

/** Builds the app as it ships and serves it on this machine. The caller closes the server. */
export async function serveBuiltApp(): Promise<{ server: PreviewServer; url: string }> {
  await build({ logLevel: 'warn', build: { outDir: OUT_DIR, emptyOutDir: true } });
  const server = await preview({
    logLevel: 'warn',
    build: { outDir: OUT_DIR },
    preview: { host: '127.0.0.1', port: 4460 },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('the preview server must have an address, got none');
  return { server, url };
}
