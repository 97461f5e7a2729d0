import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { compactMunsell } from './scripts/compact-munsell';

/** The page allows nothing inline; the development server injects styles, so there (only there) it may. */
const stylesWhileDeveloping: Plugin = {
  name: 'styles-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) =>
    html.replace(
      "default-src 'self';",
      "default-src 'self'; style-src 'self' 'unsafe-inline'; script-src 'self' 'unsafe-inline';",
    ),
};

export default defineConfig({
  base: './',
  plugins: [react(), stylesWhileDeveloping, compactMunsell()],
  build: { target: 'es2022', sourcemap: false, chunkSizeWarningLimit: 900 },
  worker: { format: 'es', plugins: () => [compactMunsell()] },
});
