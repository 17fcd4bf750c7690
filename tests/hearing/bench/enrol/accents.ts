/**
 * English phones said otherwise. What a language lacks is replaced as its speakers are known to replace it (common
 * knowledge of the accents, no study of them); everything else is the voice's own sound.
 */
export type Accent = Readonly<Record<string, readonly string[]>>;

const AMERICAN: Accent = Object.fromEntries(
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'
    .split(' ')
    .map((phone) => [phone, [phone.toLowerCase()]]),
);

/** For a voice that was recorded in American English. */
export const ACCENTS = {
  none: AMERICAN,
  spanish: {
    ...AMERICAN,
    ...{ AE: ['aa'], AH: ['aa'], AO: ['ow'], ER: ['eh', 'r'], IH: ['iy'], UH: ['uw'] },
    ...{ DH: ['d'], JH: ['y'], SH: ['ch'], TH: ['t'], V: ['b'], Z: ['s'], ZH: ['s'] },
  },
  german: {
    ...AMERICAN,
    ...{ AE: ['eh'], AH: ['aa'], ER: ['eh', 'r'], AO: ['ow'] },
    ...{ DH: ['z'], TH: ['s'], W: ['v'], JH: ['ch'], ZH: ['sh'] },
  },
  indian: {
    ...AMERICAN,
    ...{ AE: ['eh'], AO: ['aa'], ER: ['ah', 'r'], EY: ['eh'], OW: ['ao'] },
    ...{ DH: ['d'], TH: ['t'], V: ['w'], Z: ['s'], ZH: ['jh'] },
  },
} satisfies Readonly<Record<string, Accent>>;

const SAME = 'B D F G K L M N P R S T V Z'.split(' ');

/** Czech sounds saying English ones. */
export const CZECH: Accent = {
  ...Object.fromEntries(SAME.map((phone) => [phone, [phone.toLowerCase()]])),
  ...{ AA: ['a:'], AE: ['e'], AH: ['a'], AO: ['o:'], AW: ['a', 'u'], AY: ['a', 'j'] },
  ...{ EH: ['e'], ER: ['e', 'r'], EY: ['e', 'j'], IH: ['i'], IY: ['i:'], OW: ['o', 'u'] },
  ...{ OY: ['o', 'j'], UH: ['u'], UW: ['u:'], CH: ['c~'], DH: ['d'], HH: ['ch'], JH: ['dz~'] },
  ...{ NG: ['n*', 'g'], SH: ['s~'], TH: ['t'], W: ['v'], Y: ['j'], ZH: ['z~'] },
};
