/** Hands bytes to the browser as a file to keep. */
export function saveBlob(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser reads the file after the click; the address may go once it has begun.
  window.setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
