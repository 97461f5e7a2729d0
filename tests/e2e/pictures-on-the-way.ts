import type { Page } from '@playwright/test';

/** How many different pictures are drawn on the way from one place to another. */
export const picturesOnTheWay = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const shown = document.querySelector('canvas')!;
    const small = document.createElement('canvas');
    const pen = small.getContext('2d', { willReadFrequently: true })!;
    const seen = new Set<string>();
    const radios = [...document.querySelectorAll<HTMLInputElement>('[aria-label="Viewpoint"] input')];
    // A clock forty times as slow: a flight then takes several frames on a slow machine, too.
    const real = performance.now.bind(performance);
    const start_ms = real();
    performance.now = () => start_ms + (real() - start_ms) / 40;
    radios.find(({ checked }) => !checked)!.click();
    for (let frame = 0; frame < 90; frame++) {
      await new Promise((resolve) => requestAnimationFrame(resolve));
      pen.clearRect(0, 0, 48, 30);
      pen.drawImage(shown, 0, 0, 48, 30);
      const { data } = pen.getImageData(0, 0, 48, 30);
      // A canvas that was not drawn in this frame reads as empty.
      if (data.some((value) => value > 0)) seen.add(data.join());
    }
    performance.now = real;
    return seen.size;
  });
