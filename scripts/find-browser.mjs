// Finds Chromium, Chrome or Edge for the browser tests; else installs one; else says what to do.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fail, root } from './ensure-installed.mjs';

const NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'msedge',
  'chrome',
];
const PLACES = {
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
    'C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
  linux: ['/snap/bin/chromium'],
};

/** Path of a browser of the Chromium family; installs one when there is none. */
export async function findBrowser() {
  const named = process.env.UPSTAND_BROWSER;
  if (named) return existsSync(named) ? named : fail(`UPSTAND_BROWSER points to ${named}, which does not exist.`);
  return present() ?? (await playwrightsOwn()) ?? installed() ?? giveUp();
}

function present() {
  const onPath = (process.env.PATH ?? '').split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...onPath, ...(PLACES[process.platform] ?? [])].find((path) => existsSync(path)) ?? null;
}

async function playwrightsOwn() {
  const { chromium } = await import('@playwright/test');
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : null;
}

function installed() {
  const isRoot = process.getuid?.() === 0;
  if (process.platform === 'linux' && isRoot && works('apt-get', ['--version'])) {
    console.log('No browser found: installing Chromium with apt-get ...');
    works('apt-get', ['update', '-qq']);
    if (works('apt-get', ['install', '-y', '-qq', 'chromium'])) return present();
  }
  console.log('No browser found: trying to install Chromium with Playwright ...');
  if (works('npx', ['playwright', 'install', 'chromium'])) {
    const found = spawnSync('node', ['-p', "require('@playwright/test').chromium.executablePath()"], { cwd: root });
    const path = String(found.stdout).trim();
    return path && existsSync(path) ? path : null;
  }
  return null;
}

function works(command, args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return (
    spawnSync(command, args, { cwd: root, env, stdio: 'ignore', shell: process.platform === 'win32' }).status === 0
  );
}

function giveUp() {
  return fail(
    'The browser tests need Chromium, Chrome or Edge and none could be installed.\n' +
      'Install one (Debian: sudo apt-get install chromium), or set UPSTAND_BROWSER to the path of yours, and run npm test again.',
  );
}
