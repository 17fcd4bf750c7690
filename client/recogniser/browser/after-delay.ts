/** Runs it after a while unless the returned function is called. */
export function afterDelay(delayMs: number, task: () => void): () => void {
  const timer = setTimeout(task, delayMs);
  return () => clearTimeout(timer);
}
