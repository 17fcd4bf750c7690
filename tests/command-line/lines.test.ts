import { describe, expect, it } from 'vitest';
import { lines } from '../../server/command-line/lines.ts';

async function* arriving(chunks: readonly string[]): AsyncIterable<string> {
  for (const chunk of chunks) yield await Promise.resolve(chunk);
}

describe('lines', () => {
  it.each([
    ['nothing', [], []],
    ['one line without its end', ['head one forty'], ['head one forty']],
    ['one line with its end', ['head one forty\n'], ['head one forty']],
    ['an empty line between two', ['a\n\nb\n'], ['a', '', 'b']],
    [
      'a line cut in two',
      ['head one', ' forty\nsuc', 'tion twelve\n'],
      ['head one forty', 'suction twelve'],
    ],
    ['line ends of another system', ['a\r\nb\r', '\nc'], ['a', 'b', 'c']],
    ['a line separator inside a sentence', ['a\u2028b\n'], ['a\u2028b']],
  ])('reads %s', async (_what, chunks, expected) => {
    const read: string[] = [];
    for await (const line of lines(arriving(chunks))) read.push(line);
    expect(read).toEqual(expected);
  });
});
