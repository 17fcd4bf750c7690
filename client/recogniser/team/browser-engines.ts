import type { Pronunciations } from '../../../core/hearing/dictionary.ts';
import { afterDelay } from '../browser/after-delay.ts';
import { createEmbeddedEngine } from '../embedded/embedded-engine.ts';
import { createNeuralEngine } from '../neural/neural-engine.ts';
import { affordedUse, type EngineWish } from './engine-use.ts';
import { createTeamEngine, type EngineChange, type TeamEngine } from './team-engine.ts';

export interface BrowserEnginesOptions {
  /** The list of the neural engine's files, where the build puts it. */
  readonly neuralUrl: string;
  /** Folder of the embedded engine's model. */
  readonly embeddedUrl: string;
  /** Words that the dictionary of both lacks, in ARPABET. */
  readonly pronunciations: Pronunciations;
  readonly wish: () => EngineWish;
  readonly onChange: (change: EngineChange) => void;
}

/** The engines that the build serves, as one. */
export function createBrowserEngines(options: BrowserEnginesOptions): TeamEngine {
  const { pronunciations, wish, onChange } = options;
  const whole = (address: string): string => new URL(address, document.baseURI).href;
  return createTeamEngine({
    neural: createNeuralEngine({ manifestUrl: whole(options.neuralUrl), pronunciations }),
    embedded: createEmbeddedEngine({
      modelUrl: whole(options.embeddedUrl).replace(/\/$/, ''),
      pronunciations,
    }),
    wish,
    afforded: (pace) =>
      affordedUse({ cores: navigator.hardwareConcurrency, memoryGb: memoryGb() }, pace),
    onChange,
    after: afterDelay,
  });
}

/** Device Memory API: Chromium alone has it, and in secure contexts only. */
function memoryGb(): number | null {
  const told: unknown = Reflect.get(navigator, 'deviceMemory');
  return typeof told === 'number' ? told : null;
}
