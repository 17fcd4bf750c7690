import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';

const core = (file: string): string =>
  fileURLToPath(new URL(`../../core/${file}`, import.meta.url));

/** The minified code of these files of the core and all that they import, as the page's own build makes it. */
export async function minified(files: readonly string[]): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      target: 'es2022',
      rolldownOptions: { input: files.map(core), preserveEntrySignatures: 'strict' },
    },
  });
  const outputs = Array.isArray(built) ? built : [built];
  const chunks = outputs.flatMap((each) => ('output' in each ? each.output : []));
  return chunks.map((chunk) => (chunk.type === 'chunk' ? chunk.code : '')).join('\n');
}

export interface BundleBench {
  /** Saturation, constants, ranges and sources: what any answer needs. */
  readonly saturationBytes: number;
  /** With both densities and the latent heat. */
  readonly wholeBytes: number;
  /** The whole, as it crosses the network. */
  readonly wholeGzipBytes: number;
}

/** What the fluids add to the page: at most 60 kB minified. */
export async function benchBundle(): Promise<BundleBench> {
  const saturation = await minified(['fluids/saturation.ts', 'fluids/fluids.ts']);
  const whole = await minified([
    'fluids/saturation.ts',
    'fluids/fluids.ts',
    'fluids/properties.ts',
  ]);
  return {
    saturationBytes: Buffer.byteLength(saturation),
    wholeBytes: Buffer.byteLength(whole),
    wholeGzipBytes: gzipSync(whole).byteLength,
  };
}
