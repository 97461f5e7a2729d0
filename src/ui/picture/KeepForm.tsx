import { useState } from 'react';
import { Choices } from '../parts/Choices';
import { reread } from '../words/spoken';
import { VIEW } from '../words/view';

const SCALES = ['1', '2', '3', '4'] as const;
type Scale = (typeof SCALES)[number];
const SIZES = reread(() => SCALES.map((id) => ({ id, name: VIEW.sizeOf(Number(id)) })));

interface KeepFormProps {
  /** Of the picture on screen, pixels; null where there is none. */
  readonly size: () => { readonly width: number; readonly height: number } | null;
  /** Each says in a sentence what came of it. */
  readonly onSave: (scale: number) => Promise<string>;
  /** Null where the browser cannot copy pictures. */
  readonly onCopy: ((scale: number) => Promise<string>) | null;
}

/** Keeps the picture on screen as a file, or copies it. */
export function KeepForm({ size, onSave, onCopy }: KeepFormProps) {
  const [scale, setScale] = useState<Scale>('2');
  const [told, setTold] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const pixels = size();
  if (!pixels) return null;
  const times = Number(scale);
  const run = async (act: (scale: number) => Promise<string>) => {
    setBusy(true);
    setTold(VIEW.saving);
    setTold(await act(times));
    setBusy(false);
  };
  return (
    <div className="view-part room-part">
      <h3>{VIEW.keep}</h3>
      <div className="keep-row">
        <Choices label={VIEW.size} choices={SIZES} chosen={scale} onChoose={setScale} />
        <button type="button" className="button button-outlined" disabled={busy} onClick={() => void run(onSave)}>
          {VIEW.save}
        </button>
        {onCopy && (
          <button type="button" className="button button-outlined" disabled={busy} onClick={() => void run(onCopy)}>
            {VIEW.copy}
          </button>
        )}
      </div>
      <p className="small quiet" role="status">
        {told ?? VIEW.pixels(pixels.width * times, pixels.height * times)}
      </p>
    </div>
  );
}
