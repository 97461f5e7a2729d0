import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, resolve } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

export interface DistServer {
  readonly address: string;
  /** Every path asked for, in order. */
  readonly asked: string[];
  /** What is put at the end of sw.js: another text makes it another version. */
  readonly serveAs: (version: string) => void;
  readonly stop: () => Promise<void>;
  /** Listens again at the same address. */
  readonly resume: () => Promise<void>;
}

/** Serves what was built under a folder of the address, and can be stopped as if the network went. */
export async function serveDist(folder = '/shop/'): Promise<DistServer> {
  const dist = resolve('dist');
  const asked: string[] = [];
  let version = '';
  const server: Server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    asked.push(pathname);
    const name = pathname.slice(folder.length) || 'index.html';
    try {
      if (!pathname.startsWith(folder) || name.includes('..')) throw new Error('not served');
      const bytes = await readFile(join(dist, name));
      response.setHeader('content-type', TYPES[extname(name)] ?? 'application/octet-stream');
      response.end(name === 'sw.js' ? `${bytes}\n// ${version}` : bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  const listen = (port: number) => new Promise<void>((done) => server.listen(port, 'localhost', done));
  await listen(0);
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://localhost:${port}${folder}`,
    asked,
    serveAs: (next) => {
      version = next;
    },
    stop: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
    resume: () => listen(port),
  };
}
