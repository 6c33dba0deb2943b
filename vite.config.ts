import { defineConfig, type Plugin } from 'vite';

/** Inline styles are allowed for the charts, whose SVG carries a style element of its own. */
const POLICY =
  "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'none'";

const contentSecurityPolicy: Plugin = {
  name: 'content-security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
  ],
};

export default defineConfig({
  base: './',
  plugins: [contentSecurityPolicy],
  worker: { format: 'es' },
  // Fonts stay files: the policy allows no data: fonts.
  build: { target: 'es2022', sourcemap: false, assetsInlineLimit: 0 },
});
