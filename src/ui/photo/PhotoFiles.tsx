import { Camera, FolderOpen } from 'lucide-react';
import { type ReactNode, useRef } from 'react';
import { PHOTO } from '../words/photo';

interface PhotoFilesProps {
  readonly hasPicture: boolean;
  readonly isBusy: boolean;
  readonly onFile: (file: File) => void;
  /** What stands at the end of the row. */
  readonly children?: ReactNode;
}

const KINDS = 'image/jpeg,image/png,image/webp';

/** Where the photo comes from, and how to take it. */
export function PhotoFiles({ hasPicture, isBusy, onFile, children }: PhotoFilesProps) {
  return (
    <div className="photo-files">
      <div className="photo-file-buttons">
        <FileButton words={hasPicture ? PHOTO.another : PHOTO.choose} onFile={onFile} />
        <FileButton words={PHOTO.take} isCamera onFile={onFile} />
        {isBusy && <span className="small quiet">{PHOTO.reading}</span>}
        {!isBusy && !hasPicture && <span className="small quiet photo-drop">{PHOTO.drop}</span>}
        {children}
      </div>
      {!hasPicture && (
        <ul className="photo-how small">
          {PHOTO.how.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

interface FileButtonProps {
  readonly words: string;
  /** Asks the camera of a device that one holds; shown on those only. */
  readonly isCamera?: boolean;
  readonly onFile: (file: File) => void;
}

function FileButton({ words, isCamera = false, onFile }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  const Icon = isCamera ? Camera : FolderOpen;
  return (
    <>
      <button
        type="button"
        className={`button button-outlined ${isCamera ? 'photo-camera' : ''}`}
        onClick={() => input.current?.click()}
      >
        <Icon className="icon" aria-hidden="true" />
        {words}
      </button>
      <input
        ref={input}
        type="file"
        accept={KINDS}
        {...(isCamera && { capture: 'environment' as const })}
        hidden
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
    </>
  );
}
