import { readFile } from 'node:fs/promises';
import type { Hearing, Rejection } from '../../core/hearing/hearing.ts';
import type { Alternative } from '../../core/language/choose-understanding.ts';
import type { Expectation } from '../../core/language/context.ts';
import { recogniserGrammar } from '../../core/language/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { createNodeHearing } from '../hearing/node-hearing.ts';
import type { NodeHearing } from '../hearing/node-hearing.ts';
import { readWav } from '../hearing/read-wav.ts';

/** What a recording gave, or why it gave nothing. */
export type Recording =
  | {
      readonly kind: 'heard';
      /** Best first; none when nothing was heard. */
      readonly alternatives: readonly Alternative[];
      /** Set when what was heard may not be acted on. */
      readonly rejected: Rejection | null;
    }
  | { readonly kind: 'unreadable'; readonly why: string };

/** Plays recordings to the page's recogniser, with the grammar of what the dialogue expects. */
export interface Player {
  play(file: string, expects: Expectation): Promise<Recording>;
  close(): void;
}

/** Loads the engine at the first recording, once for each grammar. */
export function createPlayer(): Player {
  const engines = new Map<Expectation, NodeHearing>();
  const engineFor = async (expects: Expectation): Promise<NodeHearing> => {
    const loaded = engines.get(expects);
    if (loaded !== undefined) return loaded;
    const grammar = recogniserGrammar(expects);
    const engine = await createNodeHearing({ grammar, pronunciations: PRONUNCIATIONS });
    engines.set(expects, engine);
    return engine;
  };
  return {
    play: async (file, expects) => {
      const sound = await readSound(file);
      if (sound.kind === 'unreadable') return sound;
      return toRecording((await engineFor(expects)).hear(sound.samples));
    },
    close: () => engines.forEach((engine) => engine.dispose()),
  };
}

async function readSound(
  file: string,
): Promise<
  | { readonly kind: 'sound'; readonly samples: Float32Array }
  | { readonly kind: 'unreadable'; readonly why: string }
> {
  const bytes = await readFile(file).catch((fault: unknown) => fault);
  if (!(bytes instanceof Uint8Array)) {
    const why = bytes instanceof Error ? bytes.message : String(bytes);
    return { kind: 'unreadable', why: `cannot read the file (${why})` };
  }
  const wav = readWav(bytes);
  return wav.kind === 'sound' ? wav : { kind: 'unreadable', why: wav.message };
}

const toRecording = ({ alternatives, rejected }: Hearing): Recording => ({
  kind: 'heard',
  alternatives: alternatives.map(({ words, confidence }) => ({ words, confidence })),
  rejected: rejected ?? null,
});

/** What may be acted on: nothing when what was heard may not be. */
export const alternativesToActOn = ({
  alternatives,
  rejected,
}: Extract<Recording, { kind: 'heard' }>): readonly Alternative[] =>
  rejected === null ? alternatives : [];
