import type { WorkKindId } from '../../terms/names.ts';

interface Verb {
  /** "Brushed X", with `X` for what it was done to. */
  readonly done: string;
  readonly todo: string;
  /** Where nothing was named. */
  readonly doneAlone: string;
  readonly todoAlone: string;
}

const verb = (done: string, todo: string, alone: string): Verb => ({
  done: `${done} X`,
  todo: `${todo} X`,
  doneAlone: `${done} ${alone}`,
  todoAlone: `${todo} ${alone}`,
});

const IT = 'part of the unit';

/** Work told as what somebody did. */
export const PLAIN_WORK: Record<WorkKindId, Verb> = {
  clean: verb('cleaned', 'clean', IT),
  reset: verb('reset', 'reset', 'the unit'),
  replace: verb('replaced', 'replace', IT),
  adjust: verb('adjusted', 'adjust', IT),
  repair: verb('repaired', 'repair', IT),
  tighten: verb('tightened', 'tighten', IT),
  remove: verb('took off', 'take off', IT),
  add: verb('added', 'add', 'refrigerant'),
  recover: verb('took out', 'take out', 'the refrigerant'),
  evacuate: {
    done: 'drew the air and the moisture out of X',
    todo: 'draw the air and the moisture out of X',
    doneAlone: 'drew the air and the moisture out of the piping',
    todoAlone: 'draw the air and the moisture out of the piping',
  },
  pumpDown: {
    done: 'gathered the refrigerant of X in its own tank',
    todo: 'gather the refrigerant of X in its own tank',
    doneAlone: 'gathered the refrigerant in the unit’s own tank',
    todoAlone: 'gather the refrigerant in the unit’s own tank',
  },
  pressureTest: verb('tested the tightness of', 'test the tightness of', 'the piping'),
  leakCheck: verb('looked for leaks at', 'look for leaks at', 'the piping'),
  brush: verb('brushed', 'brush', IT),
  wash: verb('washed', 'wash', IT),
  defrost: verb('thawed', 'thaw', 'the unit'),
  restore: verb('put back', 'put back', IT),
  isolate: verb('shut off', 'shut off', 'the unit'),
  bypass: verb('bypassed', 'bypass', 'a switch'),
  disable: verb('disconnected', 'disconnect', IT),
  open: verb('opened', 'open', 'the unit'),
  connect: verb('connected', 'connect', 'our gauges'),
  setForTest: {
    done: 'set X away for a test',
    todo: 'set X away for a test',
    doneAlone: 'set a control away for a test',
    todoAlone: 'set a control away for a test',
  },
  order: verb('ordered', 'order', 'parts'),
  comeBack: {
    done: 'came back to check X',
    todo: 'come back to check X',
    doneAlone: 'came back to check it',
    todoAlone: 'come back',
  },
  asSaid: verb('did', 'do', 'the rest'),
};

/** The same in the trade's words. */
export const TRADE_WORK: Record<WorkKindId, Verb> = {
  ...PLAIN_WORK,
  reset: verb('reset', 'reset', 'it'),
  remove: verb('removed', 'remove', 'a part'),
  recover: verb('recovered', 'recover', 'the refrigerant'),
  evacuate: verb('evacuated', 'evacuate', 'the system'),
  pumpDown: verb('pumped down', 'pump down', 'the system'),
  pressureTest: verb('pressure tested', 'pressure test', 'the system'),
  leakCheck: verb('leak checked', 'leak check', 'the system'),
  defrost: verb('defrosted', 'defrost', 'the unit'),
  restore: verb('restored', 'restore', 'a part'),
  isolate: verb('isolated', 'isolate', 'the unit'),
  disable: verb('disabled', 'disable', 'a part'),
};
