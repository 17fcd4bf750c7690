export interface SavedFile {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}

/** Hands the text to the browser as a download. */
export function saveFile({ name, type, text }: SavedFile): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}
