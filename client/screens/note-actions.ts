import { saveFile, type SavedFile } from './save-file.ts';

/** What can be done with the note here. What this browser cannot do is not offered. */
export interface NoteAction {
  readonly id: 'print' | 'copy' | 'save' | 'share';
  readonly label: string;
  /** Only what is known: a browser does not tell whether it kept a file, or printed. */
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
    {
      id: 'save',
      label: 'save',
      done: 'see downloads',
      run: () => saveFile(noteFile(title, text)),
    },
    'share' in navigator
      ? { id: 'share', label: 'share', done: '', run: () => share(title, text) }
      : null,
  ];
  return actions.filter((action) => action !== null);
}

function noteFile(title: string, text: string): SavedFile {
  const name = `${title.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '')}.txt`;
  return { name, type: 'text/plain;charset=utf-8', text };
}

async function share(title: string, text: string): Promise<void> {
  try {
    await navigator.share({ title, text });
  } catch (error) {
    // Closing the list of places to share to is an answer, not a failure.
    if (!(error instanceof Error && error.name === 'AbortError')) throw error;
  }
}
