import { fileURLToPath } from 'node:url';
import type { TextGenerationPipeline } from '@huggingface/transformers';
import type { Verdict } from '../../core/advice/verdict.ts';
import type { PassagePhraser } from '../../core/note/phrase-note.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { promptFor, promptText } from '../../prompts/prompt-for.ts';
import { createSlotPhraser } from '../../prompts/decode/slot-phraser.ts';
import { loadPipeline } from './load-pipeline.ts';
import { readModelFolder } from './model-folder.ts';
import { createSlotWriter } from './slot-writer.ts';

export type LoadedPhraser =
  | {
      readonly kind: 'loaded';
      readonly phraser: Phraser;
      /** For the note's paragraphs: only a model of our own has learnt them. */
      readonly passages: PassagePhraser | null;
    }
  | { readonly kind: 'failed'; readonly message: string };

/** Our own model, trained on the corpus in prompts. */
export const OWN_MODEL = fileURLToPath(new URL('../../prompts/model', import.meta.url));

/**
 * A phraser from a language model's folder on this machine; nothing is ever fetched. A folder with a lexicon
 * holds a model that writes slots, any other one that words a sentence it is given.
 */
export async function loadPhraser(folder: string): Promise<LoadedPhraser> {
  const found = await readModelFolder(folder);
  if (found.kind === 'unusable') return { kind: 'failed', message: found.message };
  try {
    const generate = await loadPipeline(found.path, found.dtype);
    const { lexicon } = found;
    if (lexicon === null) {
      return { kind: 'loaded', phraser: createTextPhraser(generate), passages: null };
    }
    const own = createSlotPhraser(await createSlotWriter(generate), lexicon);
    return { kind: 'loaded', phraser: own, passages: own };
  } catch (fault) {
    const message = `the model in ${found.path} cannot be loaded (${firstLine(reasonOf(fault)) ?? ''}): one of its files is damaged or of a kind that this program cannot run; copy the folder again`;
    return { kind: 'failed', message };
  }
}

function createTextPhraser(generate: TextGenerationPipeline): Phraser {
  let isBusy = false;
  return {
    /** One at a time: a sentence that waits behind a late one would itself be late. */
    phrase: async (verdict) => {
      if (isBusy) return null;
      isBusy = true;
      try {
        return firstLine(await written(generate, verdict));
      } finally {
        isBusy = false;
      }
    },
  };
}

/**
 * Greedy, so that one verdict is always worded alike. 48 tokens hold two spoken sentences; rows read out are
 * longer, and cut short they lack a number, so the guard leaves those to their template.
 */
const HOW = { do_sample: false, max_new_tokens: 48, return_full_text: false } as const;

async function written(generate: TextGenerationPipeline, verdict: Verdict): Promise<string> {
  const messages = promptFor(verdict, verdictSaid(verdict).text);
  if (generate.tokenizer.chat_template === null) {
    const [answer] = await generate(promptText(messages), HOW);
    return answer?.generated_text ?? '';
  }
  const [answer] = await generate([...messages], HOW);
  const content = answer?.generated_text.at(-1)?.content;
  return typeof content === 'string' ? content : '';
}

/** A model that is not done after its sentence goes on with a next example. */
function firstLine(text: string): string | null {
  const [line = ''] = text.trim().split('\n');
  return line === '' ? null : line.trim();
}

const reasonOf = (fault: unknown): string =>
  fault instanceof Error ? fault.message : String(fault);
