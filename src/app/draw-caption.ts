const FONT_PX = 13;
const LINE_PX = 19;
const MARGIN_PX = 12;

/** A band of words to stand under a picture: RGBA, black on white. */
interface Band {
  readonly height: number;
  readonly rgba: Uint8ClampedArray;
}

/** Draws lines of words, the first bold, each broken where the band ends; `scale` enlarges them with the picture. */
export function drawCaption(lines: readonly string[], width: number, scale: number): Band {
  const canvas = document.createElement('canvas');
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new Error('There is no canvas to write on.');
  const family = getComputedStyle(document.body).fontFamily;
  const font = (isTitle: boolean) => `${isTitle ? 600 : 400} ${FONT_PX * scale}px ${family}`;
  const room = width - 2 * MARGIN_PX * scale;
  const rows = lines.flatMap((line, at) => {
    pen.font = font(at === 0);
    return broken(line, (text) => pen.measureText(text).width <= room).map((text) => ({ text, isTitle: at === 0 }));
  });
  const height = Math.round((2 * MARGIN_PX + rows.length * LINE_PX) * scale);
  canvas.width = width;
  canvas.height = height;
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.fillStyle = '#000';
  pen.textBaseline = 'middle';
  rows.forEach(({ text, isTitle }, at) => {
    pen.font = font(isTitle);
    pen.fillText(text, MARGIN_PX * scale, (MARGIN_PX + (at + 0.5) * LINE_PX) * scale);
  });
  const { data } = pen.getImageData(0, 0, width, height);
  // Letters smoothed for a screen's stripes would bring colors beside the picture.
  for (let i = 0; i < data.length; i += 4) data[i] = data[i + 2] = data[i + 1]!;
  return { height, rgba: data };
}

/** Words in lines that fit; a word that fits nowhere stands alone. */
function broken(line: string, fits: (text: string) => boolean): readonly string[] {
  const rows: string[] = [];
  let row = '';
  for (const word of line.split(' ')) {
    const longer = row === '' ? word : `${row} ${word}`;
    if (row === '' || fits(longer)) row = longer;
    else {
      rows.push(row);
      row = word;
    }
  }
  return [...rows, row];
}
