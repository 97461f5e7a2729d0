import { Minus, Plus } from 'lucide-react';
import { PHOTO } from '../words/photo';

interface PhotoZoomProps {
  readonly zoom: number;
  readonly onZoom: (zoom: number) => void;
}

const MOST_ZOOM = 8;

/** How near one looks at the photo, by doublings; nearer, it scrolls. */
export function PhotoZoom({ zoom, onZoom }: PhotoZoomProps) {
  return (
    <span className="photo-zoom">
      <button
        type="button"
        className="button button-outlined"
        aria-label={PHOTO.zoomOut}
        disabled={zoom <= 1}
        onClick={() => onZoom(zoom / 2)}
      >
        <Minus className="icon" aria-hidden="true" />
      </button>
      <button
        type="button"
        className="button button-outlined"
        aria-label={PHOTO.zoomIn}
        disabled={zoom >= MOST_ZOOM}
        onClick={() => onZoom(zoom * 2)}
      >
        <Plus className="icon" aria-hidden="true" />
      </button>
    </span>
  );
}
