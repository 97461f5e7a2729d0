import { createImportDesk } from './import-desk';
import type { FromImport, ToImport } from './import-messages';

const port = self as unknown as {
  postMessage(message: FromImport): void;
  onmessage: ((event: MessageEvent<ToImport>) => void) | null;
};

const desk = createImportDesk((message) => port.postMessage(message));
port.onmessage = ({ data }) => void desk(data);
