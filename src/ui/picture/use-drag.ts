import { useRef } from 'react';

/**
 * Tells a slider's changes apart: `continues` says whether a change belongs to the one before it, which holds from the
 * first change until the pointer or the key is let go or the focus leaves; `ends` are the handlers that notice.
 */
export function useDrag() {
  const going = useRef(false);
  const end = () => {
    going.current = false;
  };
  return {
    continues: (): boolean => {
      const before = going.current;
      going.current = true;
      return before;
    },
    ends: { onPointerUp: end, onPointerCancel: end, onKeyUp: end, onBlur: end },
  };
}
