import { useState } from 'preact/hooks';
import { saveFile } from './save-file.ts';

type Saving = 'offered' | 'saved' | 'failed';

const WORDS: Record<Saving, string> = {
  offered: 'save everything on this device as a file',
  saved: 'saved: every visit, one entry a line',
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
      setSaving('saved');
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
