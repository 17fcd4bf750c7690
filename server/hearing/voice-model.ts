import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

import * as onnx from 'onnxruntime-node';

import { createVoiceDetector, type VoiceDetector } from '../../core/hearing/voice-detector.ts';

/** Where the package keeps the detector's model, which the page's build copies. */
export const VOICE_MODEL_FILE = join(
  dirname(createRequire(import.meta.url).resolve('@ricky0123/vad-web')),
  'silero_vad_v6.onnx',
);

/** Null where the file is missing or damaged: who listens then goes by the loudness. */
export async function openVoiceDetector(file = VOICE_MODEL_FILE): Promise<VoiceDetector | null> {
  try {
    const options = { intraOpNumThreads: 1, interOpNumThreads: 1 };
    const session = await onnx.InferenceSession.create(file, options);
    return createVoiceDetector({ onnx, session });
  } catch {
    return null;
  }
}
