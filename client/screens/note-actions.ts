/** What can be done with the note here. What this browser cannot do is not offered. */
export interface NoteAction {
  readonly id: 'print' | 'copy' | 'save' | 'share';
  readonly label: string;
  readonly done: string;
  readonly run: () => Promise<void> | void;
}

export interface NoteFile {
  readonly title: string;
  readonly text: string;
}

export function noteActions({ title, text }: NoteFile): readonly NoteAction[] {
  const actions: readonly (NoteAction | null)[] = [
    { id: 'print', label: 'print', done: '', run: () => window.print() },
    'clipboard' in navigator
      ? {
          id: 'copy',
          label: 'copy',
          done: 'copied',
          run: () => navigator.clipboard.writeText(text),
        }
      : null,
    { id: 'save', label: 'save', done: 'saved', run: () => saveAsFile(title, text) },
    'share' in navigator
      ? { id: 'share', label: 'share', done: '', run: () => share(title, text) }
      : null,
  ];
  return actions.filter((action) => action !== null);
}

async function share(title: string, text: string): Promise<void> {
  try {
    await navigator.share({ title, text });
  } catch (error) {
    // Closing the list of places to share to is an answer, not a failure.
    if (!(error instanceof Error && error.name === 'AbortError')) throw error;
  }
}

function saveAsFile(title: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/plain;charset=utf-8' }));
  link.download = `${title.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '')}.txt`;
  link.click();
  URL.revokeObjectURL(link.href);
}
