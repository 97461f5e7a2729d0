let known: boolean | undefined;

/** Whether this browser can draw the picture: plain WebGL 2 is enough, no extension is needed. */
export function hasWebGl2(): boolean {
  if (known === undefined) {
    const context = document.createElement('canvas').getContext('webgl2');
    known = context !== null;
    // Browsers allow about 16 contexts at a time: give this one back.
    context?.getExtension('WEBGL_lose_context')?.loseContext();
  }
  return known;
}
