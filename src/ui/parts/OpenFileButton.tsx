import { FolderOpen } from 'lucide-react';
import { use, useRef } from 'react';
import { Locked } from './locked';

interface OpenFileButtonProps {
  readonly children: string;
  readonly title: string;
  /** Endings of the files that are offered, `.ies,.txt`. */
  readonly accept: string;
  readonly onFile: (file: File) => void;
}

/** A button that asks for a file; the same file may be chosen again. */
export function OpenFileButton({ children, title, accept, onFile }: OpenFileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  if (use(Locked)) return null;
  return (
    <>
      <button type="button" className="button button-outlined" title={title} onClick={() => input.current?.click()}>
        <FolderOpen className="icon" aria-hidden="true" />
        {children}
      </button>
      <input
        ref={input}
        type="file"
        accept={accept}
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
