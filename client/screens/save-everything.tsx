import { useState } from 'preact/hooks';
import { saveFile } from './save-file.ts';

/** The browser does not tell whether it kept the file: only that it was given it. */
type Saving = 'offered' | 'handedOver' | 'failed';

const WORDS: Record<Saving, string> = {
  offered: 'save everything on this device as a file',
  handedOver: 'given to the browser: look for it among your downloads',
  failed: 'could not be read: reload the page and try again',
};

/** The device's whole log, damaged records included, as JSON lines: for keeping, or for whoever looks into a fault. */
export function SaveEverything({ exportLog }: { exportLog: () => Promise<string> }) {
  const [saving, setSaving] = useState<Saving>('offered');
  const save = async (): Promise<void> => {
    try {
      const text = await exportLog();
      const day = new Date().toISOString().slice(0, 10);
      saveFile({ name: `gloveside-${day}.jsonl`, type: 'application/jsonl', text });
      setSaving('handedOver');
    } catch {
      setSaving('failed');
    }
  };
  return (
    <button type="button" class="wide" data-testid="save-everything" onClick={() => void save()}>
      {WORDS[saving]}
    </button>
  );
}
