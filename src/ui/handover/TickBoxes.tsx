/** Boxes to tick by hand. */
export function TickBoxes({ of }: { readonly of: readonly string[] }) {
  return (
    <span className="tick-boxes">
      {of.map((word) => (
        <span key={word} className="tick-box">
          {word}
        </span>
      ))}
    </span>
  );
}
