import { FolderOpen } from 'lucide-react';
import { useRef } from 'react';
import { failure } from '../../engine/result';
import { parseSpectrumCsv } from '../../io/spectrum-file';
import { TYPE_IN } from '../words/drawer';
import { PROBLEMS } from '../words/problems';
import type { OpenedSpectrum } from './own-finish';

interface SpectrumFieldProps {
  readonly opened?: OpenedSpectrum;
  readonly onOpened: (opened: OpenedSpectrum) => void;
}

/** A spectrum has some thousand numbers at most. */
const MOST_MEGABYTES = 5;

/** Opens a file with a measured reflectance. */
export function SpectrumField({ opened, onOpened }: SpectrumFieldProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className="field type-in-open">
      <span className="label">{opened ? opened.file : TYPE_IN.labels.spectrum()}</span>
      <button type="button" className="button button-outlined" onClick={() => input.current?.click()}>
        <FolderOpen className="icon" aria-hidden="true" />
        {TYPE_IN.openSpectrum}
      </button>
      <input
        ref={input}
        type="file"
        accept=".csv,.tsv,.txt"
        hidden
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) void readSpectrum(file).then(onOpened);
        }}
      />
    </div>
  );
}

async function readSpectrum(file: File): Promise<OpenedSpectrum> {
  if (file.size > MOST_MEGABYTES * 1e6) {
    const text = TYPE_IN.tooLarge(Math.round(file.size / 1e6));
    return { file: file.name, read: failure({ code: 'file-too-large', text, remedy: TYPE_IN.remedies.spectrum }) };
  }
  try {
    return { file: file.name, read: parseSpectrumCsv(await file.text(), file.name) };
  } catch {
    const { unreadable, unreadableRemedy } = PROBLEMS;
    return { file: file.name, read: failure({ code: 'unreadable', text: unreadable, remedy: unreadableRemedy }) };
  }
}
