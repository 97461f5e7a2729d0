import { existsSync } from 'node:fs';

/** How tests start a browser: the one npm test found (UPSTAND_BROWSER), else one in a usual place, else Playwright's own. */
export const BROWSER_LAUNCH = {
  executablePath:
    process.env.UPSTAND_BROWSER ??
    ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find((path) => existsSync(path)),
  args: [
    '--no-sandbox',
    '--use-angle=swiftshader',
    '--enable-unsafe-swiftshader',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--no-first-run',
    '--disable-quic',
    '--force-color-profile=srgb',
    // Pages of tests live for seconds: the second of the compilers takes longer than it saves. It changes speed only.
    '--js-flags=--no-turbofan',
  ],
};

/**
 * The same where nobody looks at pixels of the picture: only the picture is drawn as on a graphics card, which is none, the page itself in
 * a third of the time. The picture then has to be read back for every frame.
 */
export const PAGES_LAUNCH = { ...BROWSER_LAUNCH, args: [...BROWSER_LAUNCH.args, '--disable-gpu-compositing'] };
