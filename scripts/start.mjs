// npm start: installs if needed, builds if needed, serves the app with the demo project, prints the address.
import { buildIfNeeded } from './build-if-needed.mjs';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
buildIfNeeded();
const { preview } = await import('vite');
const server = await preview({
  root,
  preview: {
    port: Number(process.env.PORT) || 4173,
    strictPort: Boolean(process.env.PORT),
    host: process.env.HOST || 'localhost',
  },
});
console.log(`\nUpstand is ready with the demo project: ${server.resolvedUrls.local[0]}\nStop it with Ctrl+C.`);
