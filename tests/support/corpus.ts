import { readdirSync, readFileSync } from 'node:fs';
import type { CorpusLine } from '../../prompts/corpus/corpus-line.ts';
import { parseCorpus } from '../../prompts/corpus/parse-corpus.ts';

/** The whole corpus of one job, or a throw that names the file and the line at fault. */
export function readCorpus(job: 'replies' | 'note'): readonly CorpusLine[] {
  const folder = new URL(`../../prompts/corpus/${job}/`, import.meta.url);
  const files = readdirSync(folder).filter((file) => file.endsWith('.tsv'));
  return files.flatMap((file) => linesOf(job, new URL(file, folder)));
}

function linesOf(job: 'replies' | 'note', file: URL): readonly CorpusLine[] {
  const name = file.pathname.replace(/^.*\/(.+)\.tsv$/, '$1');
  const parsed = parseCorpus(job === 'note' ? `note.${name}` : name, readFileSync(file, 'utf8'));
  if (parsed.kind === 'unusable') {
    throw new Error(`${job}/${name}.tsv line ${parsed.line}: ${parsed.message}`);
  }
  return parsed.lines;
}
