/** The one rate hearing works at, in samples a second. */
export const SAMPLE_RATE_HZ = 16_000;

/** Settings of the embedded finite-state engine, each with what it was measured to do. */
export const ENGINE_PARAMETERS = {
  /** The engine's own default is 44,100. */
  samprate: SAMPLE_RATE_HZ,
  /** `lw` 1 with `wip` 0.2 took open digit strings of real speakers from 45 to 61 % right. */
  lw: 1,
  wip: 0.2,
  loglevel: 'FATAL',
} as const;

/**
 * The front end's settings: those of the model's own training (8 kHz American English, CMU Sphinx
 * 5.2), except that noise removal is off: below 15 dB it lost more words than it saved.
 */
export const FEATURE_PARAMETERS = {
  lowerf: 130,
  upperf: 3700,
  nfilt: 20,
  transform: 'dct',
  lifter: 22,
  feat: '1s_c_d_dd',
  svspec: '0-12/13-25/26-38',
  cmn: 'current',
  varnorm: 0,
  remove_noise: 0,
} as const;

/** What the engine reads, by the name of its setting, and the file of the package that holds it. */
export const MODEL_FILES = {
  mdef: 'mdef',
  tmat: 'transition_matrices',
  mean: 'means',
  var: 'variances',
  sendump: 'sendump',
  fdict: 'noisedict.txt',
} as const;
export type ModelFile = keyof typeof MODEL_FILES;

/** Pronunciations of the model's language, beside the model files. */
export const DICTIONARY_FILE = 'dict.txt';
