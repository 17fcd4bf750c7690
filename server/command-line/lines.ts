/**
 * Text cut into lines as it arrives. Only a line feed ends a line (with the carriage return before it): a
 * sentence holding U+2028 stays one sentence, where node:readline would answer it with two objects.
 */
export async function* lines(chunks: AsyncIterable<string>): AsyncIterable<string> {
  let rest = '';
  for await (const chunk of chunks) {
    const pieces = (rest + chunk).split('\n');
    rest = pieces.pop() ?? '';
    for (const piece of pieces) yield piece.replace(/\r$/, '');
  }
  if (rest !== '') yield rest;
}
