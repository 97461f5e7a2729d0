const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Base64 with the URL-safe alphabet and without padding (RFC 4648, section 5). */
export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(i, i + 3);
    const bits = (a << 16) | (b << 8) | c;
    const digits = Math.min(4, bytes.length - i + 1);
    for (let k = 0; k < digits; k++) text += DIGITS[(bits >> (18 - 6 * k)) & 63];
  }
  return text;
}

/** The bytes of such a text; null where it is none. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  let count = 0;
  let at = 0;
  for (const digit of text) {
    const value = DIGITS.indexOf(digit);
    if (value < 0) return null;
    bits = ((bits << 6) | value) & 0xffff;
    count += 6;
    if (count < 8) continue;
    count -= 8;
    bytes[at++] = (bits >> count) & 0xff;
  }
  return bytes;
}
