import type {
  EtaAnswer,
  PressureTestAnswer,
  TimeLeftAnswer,
  TimeUpAnswer,
  VacuumHoldAnswer,
} from '../../../advice/settling/settling-verdict.ts';
import type { Amount } from '../../../units/amount.ts';
import { SHORT_NAMES } from '../../names.ts';
import { plain, type Said } from '../../said.ts';
import { otherTimersLeft, timerName, timeUpTail } from '../../timer-sentences.ts';
import { span, together } from './settling.ts';
import { amountSlot, wordSlot, type Told, type ToldSlot } from './told.ts';

const THERE =
  '[for|to|until|then|before] {about} [at|is at|to be at|to reach|reaches] {target}|{about} [at|is at|will be at|to reach|reaches] {target}|to get {about} to {target}|to {target} on {about}';

export function etaTold({ about, target, unit, minutes, uncertainty }: EtaAnswer): Told {
  return together([
    {
      fields: [uncertainty === null ? 'earliest' : 'bounded'],
      slots: {
        about: wordSlot(SHORT_NAMES[about]),
        target: amountSlot({ value: target, unit }),
        time: span(minutes),
        ...(uncertainty === null ? {} : { either: span(uncertainty) }),
      },
      must: uncertainty === null ? EARLIEST : BOUNDED,
    },
  ]);
}

const EARLIEST = [
  'not before {time} [from now|]|{time} at the [earliest|least|very least]|at [least|the earliest] {time}|no sooner than {time}|{time} or more',
  THERE,
  '[it|the box|that] slows [down|] [as|while] it comes down|it comes down slower [as it goes|towards the end]',
  '[read|check] it [again|] on the way [down|]|read it again before then',
];

const BOUNDED = [
  '[in|] [about|around] {time}|[give it|it takes|figure] [about|around] {time}',
  '[give or take|plus or minus] {either}|{either} either way|{either} more or less',
  THERE,
];

const WENT =
  '[it went from|it came from|went from|came from|from|] {from} to {to} in {span}|in {span} [it went|it came|it rose|it moved|] from {from} to {to}|in {span} : {from} to {to}|{to} [after {span}|{span} on] , [from|up from|it was] {from}';

const HOLD: Record<VacuumHoldAnswer['verdict'], readonly string[]> = {
  tight: [
    '[it|the vacuum] [held|has held|holds]|[it|] held',
    '[it is|that is|so it is|so|] tight|[the|a] [system|unit] is tight',
  ],
  holdingSoFar: [
    '[it|the vacuum] [holds|is holding|has held] so far|holding so far|so far it holds',
    '[give it|let it stand|wait|hold it] [ten minutes|for ten minutes] [in all|altogether|all told]|[give it|let it stand|wait|hold it] the full ten minutes',
    '[read|check|take] it [again|once more]|then [read|check|take] it [again|once more]',
  ],
  leak: [
    '[it|that] [rises|is rising|keeps rising|rose|climbs|keeps climbing] without slowing [down|]|[it|] [rises|keeps rising|climbs|is climbing] and does not slow [down|]',
    '[that is|it is|] a leak|it leaks|[you have|there is] a leak',
    '[find|find and mend|go find] it before the charge goes in|[find|go find] it before you [charge|put the charge in]|[no charge|the charge does not go in] [until|before] it is found',
  ],
  moisture: [
    '[it|that] [levelled|levels] off where water boils|[levelled|levels] off where water boils|[it|that] stopped where water boils',
    '[that is|it is|] [moisture|water] [in it|in there|]|[there is|you have] [moisture|water] in [it|there]',
    'break [it|the vacuum] with dry nitrogen',
    '[and|then|] pull [it|] [again|down again|once more]',
  ],
  offGassing: [
    '[it|that] [levelled|levels] off|[levelled|levels] off',
    '[that is|] most likely refrigerant [coming|boiling|] out of the oil|refrigerant [coming|boiling|] out of the oil [, most likely|most likely]',
    'pull [it|] longer',
    '[and|then|] [hold|hold it|test it|let it stand] [again|once more]',
  ],
  moistureOrOffGassing: [
    '[it|that] [levelled|levels] off|[levelled|levels] off',
    '[that is|it is|either|] [moisture|water] [, or|or] refrigerant [coming|boiling|] out of the oil',
    'break [it|the vacuum] with dry nitrogen',
    '[and|then|] pull [it|] [again|down again|once more]',
  ],
  readLonger: [
    '[that|it] does not tell a leak from [moisture|water] yet|[no telling|too soon to tell] a leak from [moisture|water] [yet|]|that may be a leak or [moisture|water] [:|,] [no telling|too soon to tell] yet',
    '[hold on|wait|let it stand|keep holding|hold]',
    '[read|check|take] it [again|once more] in five minutes|in five minutes [read|check|take] it [again|once more]',
  ],
};

export function vacuumHoldTold({ verdict, from, to, unit, minutes }: VacuumHoldAnswer): Told {
  return {
    fields: [verdict],
    slots: {
      from: amountSlot({ value: from, unit }),
      to: amountSlot({ value: to, unit }),
      span: span(minutes),
    },
    must: [WENT, ...HOLD[verdict]],
  };
}

const TEST: Record<PressureTestAnswer['verdict'], readonly string[]> = {
  holds: ['[it|the test|the pressure] [held|has held|holds]|held'],
  leaks: [
    '{lost} [lost|gone] [beyond|past] the temperature|[it|] lost {lost} [beyond|past] the temperature|{lost} more gone than the temperature explains|[it|] lost {lost} more than the temperature explains',
    '[that is|it is|] a leak|it leaks|[you have|there is] a leak',
    '[find|go find|now find] [it|the leak]|[it|the leak] has to be found',
  ],
  rises: [
    '{lost} [over|more than|above] what the temperature explains|[it|] [gained|is up] {lost} more than the temperature explains',
    'check the gas temperature',
    '[and|, and] [check|see|look|make sure|] that no liquid is in there|[and|, and] that there is no liquid in there',
  ],
  temperatureNotRead: [
    '[without|with no] [the|] gas temperatures [that|it] [proves nothing|does not prove a thing]|[that|it] proves nothing without the gas temperatures',
    '[say|give me|tell me] each [one|] with its pressure',
  ],
};

const TEST_MAY: Partial<Record<PressureTestAnswer['verdict'], readonly string[]>> = {
  temperatureNotRead: [', like one fifty of nitrogen at seventy degrees'],
};

export function pressureTestTold(test: PressureTestAnswer): Told {
  const { verdict, from, to, fromTemp, toTemp, expected, minutes } = test;
  const lost = Math.abs(to.value - (expected?.value ?? to.value));
  return together([
    {
      fields: [verdict],
      slots: {
        from: atSlot(from, fromTemp),
        to: atSlot(to, toTemp),
        span: span(minutes),
        ...(NEEDS_LOST.has(verdict) ? { lost: amountSlot({ value: lost, unit: to.unit }) } : {}),
      },
      must: [WENT, ...TEST[verdict]],
      may: TEST_MAY[verdict] ?? [],
    },
    expected === null
      ? null
      : {
          fields: ['expected'],
          slots: { expected: amountSlot(expected) },
          must: [],
          may: [
            '[it|] should [be|read|stand at|have been] {expected} by the temperature|by the temperature [it|] should [be|read] {expected}|the temperature makes it {expected}',
          ],
        },
  ]);
}

const NEEDS_LOST: ReadonlySet<PressureTestAnswer['verdict']> = new Set<
  PressureTestAnswer['verdict']
>(['leaks', 'rises']);

function atSlot(pressure: Amount, temp: Amount | null): ToldSlot {
  const first = amountSlot(pressure);
  if (temp === null) return first;
  const second = amountSlot(temp);
  return {
    text: `${first.text} at ${second.text}`,
    spoken: `${first.spoken} at ${second.spoken}`,
    also: first.also.map((other, index) => `${other} at ${second.also[index] ?? second.text}`),
  };
}

type Timed = TimeLeftAnswer['timers'][number];

export function timeLeftTold({ timers }: TimeLeftAnswer): Told {
  return together(timers.slice(0, 1).map(leftPiece), otherTimersLeft({ timers }));
}

function leftPiece({ timer, minutes }: Timed) {
  const left =
    minutes < 1
      ? wordSlot('under a minute')
      : amountSlot({ value: Math.ceil(minutes), unit: 'min' });
  if (timer.about === null) {
    return {
      fields: ['unnamed'],
      slots: { left },
      must: [
        '{left} [left|to go|more|yet|still to go] [on the timer|]|[still|] {left} to go|the timer has {left} [left|to go]',
      ],
    };
  }
  return {
    fields: ['named'],
    slots: { left, timer: wordSlot(timerName(timer)) },
    must: [
      '{left} [left|to go|more|yet|still to go|] [on|for] the {timer} [timer|]|[the|] {timer} [timer|] [has|:|,] {left} [left|to go|more|still to go]|[on|for] the {timer} : {left} [left|to go]',
    ],
  };
}

export function timeUpTold({ timers }: TimeUpAnswer): Told {
  return together(timers.slice(0, 1).map(upPiece), timeUpTail({ timers }));
}

function upPiece({ timer, minutes }: Timed) {
  const time = amountSlot({ value: minutes, unit: 'min' });
  if (timer.about === null) {
    return {
      fields: ['unnamed'],
      slots: { time },
      must: [
        "[the|your|] {time} [are|is|] up|{time} [:|, and] [time is up|time's up]|[time is up|time's up] : {time}|{time} [are|is|] over",
      ],
    };
  }
  return {
    fields: ['named'],
    slots: { time, timer: wordSlot(timerName(timer)) },
    must: [
      '[the|your|] {time} [are|is|] up [:|,|on|for] [the|] {timer}|[the|] {timer} [:|,] [the|] {time} [are|is|] up|[the|] {timer} : time is up , {time}|{time} [are|is] over [on|for] the {timer}|time is up [on|for] the {timer} : {time}',
    ],
  };
}

/** A whole sentence of ours, said word for word: its full stop and its capital are the sentence's around it. */
export function sentenceSlot(sentence: Said | string): ToldSlot {
  const { text, spoken } = typeof sentence === 'string' ? plain(sentence) : sentence;
  return wordSlot({ text: inMiddle(text), spoken: inMiddle(spoken) });
}

const inMiddle = (words: string): string =>
  words.charAt(0).toLowerCase() + words.slice(1).replace(/\.$/, '');
