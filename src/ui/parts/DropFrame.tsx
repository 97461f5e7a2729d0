import { useEffect, useRef, useState } from 'react';
import { DROP } from '../words/drop';
import './drop-frame.css';

interface DropFrameProps {
  /** Null: nothing is taken here; the browser is still kept from opening the file in place of the page. */
  readonly onFiles: ((files: readonly File[]) => void) | null;
}

/** Takes files that are dropped anywhere on the page, and shows while one is held over it. Parts that take files themselves go first. */
export function DropFrame({ onFiles }: DropFrameProps) {
  const [isOver, setOver] = useState(false);
  const take = useRef(onFiles);
  useEffect(() => {
    take.current = onFiles;
  });
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      const isTaken = event.defaultPrevented;
      event.preventDefault();
      // What lies over the page has doors of its own, and the page behind it stays as it is.
      const isFree = take.current !== null && document.querySelector('dialog[open]') === null;
      if (!isTaken && !isFree) event.dataTransfer.dropEffect = 'none';
      setOver(!isTaken && isFree);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      setOver(false);
      if (event.defaultPrevented || !event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      if (document.querySelector('dialog[open]') === null) take.current?.([...event.dataTransfer.files]);
    };
    window.addEventListener('dragover', over);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
    };
  }, []);
  if (!isOver) return null;
  return (
    <div className="drop-frame">
      <p>
        <strong>{DROP.frame}</strong>
        <span className="small">{DROP.frameMore}</span>
      </p>
    </div>
  );
}
