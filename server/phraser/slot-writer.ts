import type { Tensor, TextGenerationPipeline } from '@huggingface/transformers';
import { constrainedStep } from '../../prompts/decode/constrained-step.ts';
import { LONGEST } from '../../prompts/decode/constraint.ts';
import type { Writer } from '../../prompts/decode/phrase-in-tries.ts';

/** Our own model behind the library's pipeline; the constraint draws, so the library takes the highest score. */
export async function createSlotWriter(generate: TextGenerationPipeline): Promise<Writer> {
  const { LogitsProcessor, LogitsProcessorList } = await import('@huggingface/transformers');

  class Constrained extends LogitsProcessor {
    readonly #step: ReturnType<typeof constrainedStep>;

    constructor(step: ReturnType<typeof constrainedStep>) {
      super();
      this.#step = step;
    }

    override _call(rows: bigint[][], logits: Tensor): Tensor {
      this.#step(rows, logits.data);
      return logits;
    }
  }

  return async (prompt, constraint) => {
    const processors = new LogitsProcessorList();
    processors.push(new Constrained(constrainedStep(constraint)));
    const [answer] = await generate(prompt, { ...HOW, logits_processor: processors });
    return answer?.generated_text.trim() ?? '';
  };
}

const HOW = { do_sample: false, max_new_tokens: LONGEST, return_full_text: false } as const;
