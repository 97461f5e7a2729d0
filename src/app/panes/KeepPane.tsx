import { KeepForm } from '../../ui/picture/KeepForm';
import { VIEW } from '../../ui/words/view';
import { pictureFileName } from '../caption-lines';
import { useApp } from '../context';
import { exportPicture, pictureCanvas } from '../export-picture';
import { pictureCurrent } from '../picture-current';
import { saveBlob } from '../save-blob';

const canCopy = () => 'ClipboardItem' in window && navigator.clipboard?.write !== undefined;

/** The form that keeps the picture on screen. */
export function KeepPane() {
  const { store } = useApp();
  const draw = async (scale: number) => {
    await pictureCurrent(store);
    return exportPicture(store.getState(), scale, new Date());
  };
  return (
    <KeepForm
      size={pictureCanvas}
      onSave={async (scale) => {
        try {
          const picture = await draw(scale);
          const name = pictureFileName(store.getState());
          saveBlob(picture, name);
          return VIEW.saved(name);
        } catch {
          return VIEW.failed;
        }
      }}
      onCopy={
        canCopy()
          ? async (scale) => {
              try {
                // Begun within the press: some browsers allow copying only then.
                await navigator.clipboard.write([new ClipboardItem({ 'image/png': draw(scale) })]);
                return VIEW.copied;
              } catch {
                return VIEW.notCopied;
              }
            }
          : null
      }
    />
  );
}
