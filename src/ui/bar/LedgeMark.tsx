/** The product's sign: an upright meets a flat, with the shadow gap between them. */
export function LedgeMark() {
  return (
    <svg className="ledge-mark" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
      <path d="M7 3v14" stroke="currentColor" strokeWidth="4" fill="none" />
      <path d="M5 20h16" stroke="currentColor" strokeWidth="3" fill="none" />
    </svg>
  );
}
