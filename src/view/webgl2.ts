let known: boolean | undefined;

/** Whether this browser can draw the picture: WebGL 2 with float render targets is not needed, plain WebGL 2 is. */
export function hasWebGl2(): boolean {
  if (known === undefined) {
    const context = document.createElement('canvas').getContext('webgl2');
    known = context !== null;
    // Browsers allow about 16 contexts at a time: give this one back.
    context?.getExtension('WEBGL_lose_context')?.loseContext();
  }
  return known;
}
