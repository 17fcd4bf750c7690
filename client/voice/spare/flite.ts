import { type Directory, File, OpenFile, PreopenDirectory, WASI } from '@bjorn3/browser_wasi_shim';

/** Mono, −1..1. */
export interface SpokenSound {
  readonly samples: Float32Array<ArrayBuffer>;
  readonly rateHz: number;
}

/**
 * Of sixteen readings said by each voice, the embedded recogniser, which was trained on none of them, heard 15 of slt and
 * of rms, 13 of awb, 11 of kal16 and of kal; the neural one, trained on the first three, all of those and 13 of kal's.
 * These are recorded voices' models; a formant synthesiser's buzz is further still from speech.
 */
const VOICE: FliteVoice = 'slt';
export type FliteVoice = 'slt' | 'rms' | 'awb' | 'kal16' | 'kal';
const WAV = 'said.wav';

/**
 * Says a text with Flite (Carnegie Mellon University, a licence of the BSD kind), which is a program: each text is one
 * run of it, in a file system of its own with nothing in it. Rejects when it says nothing.
 */
export async function runFlite(
  module: WebAssembly.Module,
  text: string,
  voice: FliteVoice = VOICE,
): Promise<SpokenSound> {
  const root = new PreopenDirectory('/', new Map());
  const silent = (): OpenFile => new OpenFile(new File([]));
  const args = ['flite', '-voice', voice, '-t', text, '-o', WAV];
  const wasi = new WASI(args, [], [silent(), silent(), silent(), root], { debug: false });
  const { exports } = await WebAssembly.instantiate(module, {
    wasi_snapshot_preview1: wasi.wasiImport,
  });
  const { memory, _start: start } = exports;
  if (!(memory instanceof WebAssembly.Memory) || typeof start !== 'function') {
    throw new Error('the voice is no program of the kind expected');
  }
  wasi.start({ exports: { memory, _start: (): unknown => Reflect.apply(start, undefined, []) } });
  const written = fileIn(root.dir);
  if (written === null) throw new Error('the voice said nothing');
  return readSound(written);
}

function fileIn(folder: Directory): Uint8Array | null {
  const file = folder.contents.get(WAV);
  return file instanceof File ? file.data : null;
}

/** RIFF, as Flite writes it: 44 bytes of header, then 16-bit samples. */
function readSound(wav: Uint8Array): SpokenSound {
  const HEADER = 44;
  const view = new DataView(wav.buffer, wav.byteOffset, wav.byteLength);
  const count = Math.max(0, Math.floor((wav.byteLength - HEADER) / 2));
  return {
    samples: Float32Array.from(
      { length: count },
      (_, index) => view.getInt16(HEADER + 2 * index, true) / 2 ** 15,
    ),
    rateHz: count === 0 ? 16_000 : view.getUint32(24, true),
  };
}
