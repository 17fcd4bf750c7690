import type { Tensor, TextGenerationPipeline } from '@huggingface/transformers';
import { type Constraint, LONGEST } from '../../prompts/decode/constraint.ts';
import type { Writer } from '../../prompts/decode/phrase-in-tries.ts';

/** Our own model behind the library's pipeline; the constraint draws, so the library takes the highest score. */
export async function createSlotWriter(generate: TextGenerationPipeline): Promise<Writer> {
  const { LogitsProcessor, LogitsProcessorList } = await import('@huggingface/transformers');

  class Constrained extends LogitsProcessor {
    readonly #constraint: Constraint;
    #promptLength: number | null = null;

    constructor(constraint: Constraint) {
      super();
      this.#constraint = constraint;
    }

    override _call(rows: bigint[][], logits: Tensor): Tensor {
      const [row = []] = rows;
      this.#promptLength ??= row.length;
      const scores: unknown = logits.data;
      if (scores instanceof Float32Array) {
        this.#constraint(row.slice(this.#promptLength).map(Number), scores);
      }
      return logits;
    }
  }

  return async (prompt, constraint) => {
    const processors = new LogitsProcessorList();
    processors.push(new Constrained(constraint));
    const [answer] = await generate(prompt, { ...HOW, logits_processor: processors });
    return answer?.generated_text.trim() ?? '';
  };
}

const HOW = { do_sample: false, max_new_tokens: LONGEST, return_full_text: false } as const;
