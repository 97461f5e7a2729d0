interface NumberTextProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

/** A short field for a number, which may stay empty. */
export const NumberText = ({ label, value, onChange }: NumberTextProps) => (
  <label className="field">
    <span className="label">{label}</span>
    <input
      className="input"
      inputMode="decimal"
      value={value}
      onChange={(event) => onChange(event.target.value)}
      size={3}
    />
  </label>
);
