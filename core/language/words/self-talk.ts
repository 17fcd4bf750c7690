import type { Token } from '../../grammar/tokens.ts';
import { FILLERS } from './fillers.ts';
import { WordSet } from './word-set.ts';

/**
 * What a man says to himself while his hands work is made of. None of it names a part, a state or a way that one can be:
 * "it's off", "that's bad" may be told of something, and are not here.
 */
const SAID_TO_ONESELF = new WordSet(
  'i we you he she it they me us him her them my our your his their this that these those the a an some any one other ' +
    'am is are was were be been being have has had do does did will would can could should might must going gonna got get not no ' +
    'getting gets let not never ever here there where now then just still even only really pretty very too also again already ' +
    'almost enough maybe better right wrong nice great well much more most little lot bit quite kind sort anyway though ' +
    'see look looks looking think thinking know like likes want wanted go goes come comes make makes made take say says said ' +
    'hope guess feel feels tell find keep stay believe love hate care matter happen happened happens mean means sense deal ' +
    'talk talking cooking somewhere explain explains figure figures figured thing things stuff way time day reason idea fun mess pain joke luck ' +
    'shame beast nightmare disaster riddle mystery story weird odd strange funny crazy ugly beautiful brutal stupid silly ' +
    'lousy tough hard easy interesting lovely terrible awful horrible ridiculous unbelievable second minute sun wind rain ' +
    'flashlight glove gloves ladder screwdriver wrench pliers glasses pen knee knees hand hands finger fingers who whoever ' +
    'somebody someone nobody right back put place world heck hell earth god lord man boy and or but so if because than as of to in at for with from',
);

/** What begins so wants an answer, if it only is that we have none. */
const ASKS = new WordSet(
  'what how why which when should can could do does did is are am was will would may',
);

const LEADS = new WordSet('uh um so well now and ok oh man');

/** Whether all of it is said to nobody: a word alone is not, as it may be what is left of a command. */
export function isSaidToOneself(tokens: readonly Token[]): boolean {
  const first = tokens.find((token) => !LEADS.has(token));
  if (first === undefined || tokens.length < 2 || ASKS.has(first)) return false;
  return tokens.every((token) => SAID_TO_ONESELF.has(token) || FILLERS.has(token));
}
