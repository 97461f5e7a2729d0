import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { buildStamp } from './scripts/build-stamp';
import { compactMunsell } from './scripts/compact-munsell';

/** The page allows nothing inline; the development server injects styles and a script, so there (only there) it may. */
const inlineWhileDeveloping: Plugin = {
  name: 'inline-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) =>
    html
      .replace("script-src 'self'", "script-src 'self' 'unsafe-inline'")
      .replace("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
};

/** Tells the page which build it is. */
const stamp: Plugin = {
  name: 'build-stamp',
  transformIndexHtml: () => [{ tag: 'meta', attrs: { name: 'version', content: buildStamp() }, injectTo: 'head' }],
};

/** Keeps everything that was built for use without a network, and nothing else; the page registers it (src/app/offline). */
const worksOffline = VitePWA({
  registerType: 'prompt',
  injectRegister: null,
  manifest: false,
  workbox: {
    globPatterns: ['**/*'],
    maximumFileSizeToCacheInBytes: 16e6,
    cleanupOutdatedCaches: true,
    clientsClaim: true,
    navigateFallback: 'index.html',
  },
});

export default defineConfig({
  base: './',
  plugins: [react(), inlineWhileDeveloping, stamp, compactMunsell(), worksOffline],
  build: {
    target: 'es2022',
    sourcemap: false,
    chunkSizeWarningLimit: 1000,
    // What the page needs from its first moment comes as one file: as fifty, half of the wait is asking for them.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'start', tags: ['$initial'] }] } } },
  },
  worker: { format: 'es', plugins: () => [compactMunsell()] },
});
