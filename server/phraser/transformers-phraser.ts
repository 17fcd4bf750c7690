import type { TextGenerationPipeline } from '@huggingface/transformers';
import type { Verdict } from '../../core/advice/verdict.ts';
import type { Phraser } from '../../core/replies/phrasing.ts';
import { verdictSaid } from '../../core/replies/verdict-said.ts';
import { promptFor, promptText } from '../../prompts/prompt-for.ts';
import { type Dtype, readModelFolder } from './model-folder.ts';

export type LoadedPhraser =
  | { readonly kind: 'loaded'; readonly phraser: Phraser }
  | { readonly kind: 'failed'; readonly message: string };

/** A phraser from a language model's folder on this machine; nothing is ever fetched. */
export async function loadPhraser(folder: string): Promise<LoadedPhraser> {
  const found = await readModelFolder(folder);
  if (found.kind === 'unusable') return { kind: 'failed', message: found.message };
  try {
    const generate = await loadPipeline(found.path, found.dtype);
    return { kind: 'loaded', phraser: createPhraser(generate) };
  } catch (fault) {
    const message = `the model in ${found.path} cannot be loaded (${firstLine(reasonOf(fault)) ?? ''}): one of its files is damaged or of a kind that this program cannot run; copy the folder again`;
    return { kind: 'failed', message };
  }
}

/** The library takes half a second to load: only whoever asks for a model pays it. */
async function loadPipeline(path: string, dtype: Dtype): Promise<TextGenerationPipeline> {
  const { env, LogLevel, pipeline } = await import('@huggingface/transformers');
  env.allowRemoteModels = false;
  env.useFSCache = false;
  env.useWasmCache = false;
  env.logLevel = LogLevel.ERROR;
  env.fetch = () => Promise.reject(new Error('a phrasing model is read from its folder alone'));
  return pipeline('text-generation', path, {
    dtype,
    device: 'cpu',
    local_files_only: true,
    session_options: ONE_THREAD,
  });
}

/** The recogniser runs beside it; in a trial in Chromium, small models were slower on two threads than on one. */
const ONE_THREAD = { intraOpNumThreads: 1, interOpNumThreads: 1 };

function createPhraser(generate: TextGenerationPipeline): Phraser {
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
