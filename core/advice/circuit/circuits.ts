import type { Circuit, CircuitPart, Load, Supply, Switch } from './circuit.ts';

const SOURCE = 'common practice: the unit’s own wiring diagram comes first';

type Wires = readonly [from: string, to: string];

const supply = (id: Supply['id'], at: string): Supply => ({ kind: 'supply', id, at });
const contact = (id: Switch['id'], [from, to]: Wires): Switch => ({
  kind: 'switch',
  id,
  from,
  to,
});
const load = (id: Load['id'], [from, to]: Wires): Load => ({ kind: 'load', id, from, to });
const operated = (of: Switch, operatedBy: Load['id']): Switch => ({ ...of, operatedBy });

const RETURN_PATH: Switch = {
  kind: 'switch',
  id: 'returnPath',
  from: 'return',
  to: 'neutral',
  isWire: true,
};

const SINGLE_PHASE: readonly CircuitPart[] = [supply('supply', 'line'), RETURN_PATH];
const LINE_TO_NEUTRAL = ['line', 'neutral'] as const;

/** The compressor with its external overload, and the condenser fan beside it. */
const condensingSide = (at: string): readonly CircuitPart[] => [
  contact('overload', [at, 'compressor terminal']),
  load('compressor', ['compressor terminal', 'return']),
  load('condenserFan', [at, 'return']),
];

/** The controls in series; what is after them gets power when all are closed. */
const controls = (from: string, to: string): readonly CircuitPart[] => [
  contact('temperatureControl', [from, 'after temperature control']),
  contact('highPressureSwitch', ['after temperature control', 'after high-pressure switch']),
  contact('lowPressureSwitch', ['after high-pressure switch', to]),
];

const CONTACTS = operated(contact('contacts', ['line', 'load side']), 'contactor');

/**
 * A walk-in that pumps down: the thermostat only shuts the liquid-line solenoid, and the low-pressure switch
 * follows. It opens because the solenoid is shut as well as for want of refrigerant.
 */
const pumpDown = (fed: string): readonly CircuitPart[] => [
  contact('temperatureControl', [fed, 'after temperature control']),
  load('liquidLineSolenoid', ['after temperature control', 'return']),
  contact('highPressureSwitch', ['line', 'after high-pressure switch']),
  operated(
    contact('lowPressureSwitch', ['after high-pressure switch', 'coil']),
    'liquidLineSolenoid',
  ),
  load('contactor', ['coil', 'return']),
  CONTACTS,
  ...condensingSide('load side'),
];

/** One for each kind of equipment and build; the first of a kind is the commonest. */
export const CIRCUITS: readonly Circuit[] = [
  {
    id: 'plugInCooler',
    equipment: ['reachIn', 'prepTable', 'displayCase'],
    parts: [
      ...SINGLE_PHASE,
      ...controls('line', 'switched'),
      ...condensingSide('switched'),
      contact('doorSwitch', ['line', 'after door switch']),
      load('evaporatorFan', ['after door switch', 'return']),
    ],
    across: LINE_TO_NEUTRAL,
    source: SOURCE,
  },
  {
    id: 'plugInFreezer',
    equipment: ['reachIn', 'prepTable', 'displayCase'],
    parts: [
      ...SINGLE_PHASE,
      contact('defrostTimer', ['line', 'cooling']),
      ...controls('cooling', 'switched'),
      ...condensingSide('switched'),
      contact('doorSwitch', ['cooling', 'after door switch']),
      load('evaporatorFan', ['after door switch', 'return']),
    ],
    across: LINE_TO_NEUTRAL,
    source: SOURCE,
  },
  {
    id: 'plugInWithContactor',
    equipment: ['reachIn', 'prepTable', 'displayCase'],
    parts: [
      ...SINGLE_PHASE,
      ...controls('line', 'coil'),
      load('contactor', ['coil', 'return']),
      CONTACTS,
      ...condensingSide('load side'),
      contact('doorSwitch', ['line', 'after door switch']),
      load('evaporatorFan', ['after door switch', 'return']),
    ],
    across: LINE_TO_NEUTRAL,
    source: SOURCE,
  },
  {
    id: 'walkInCooler',
    equipment: ['walkInCooler'],
    parts: [...SINGLE_PHASE, ...pumpDown('line'), load('evaporatorFan', ['line', 'return'])],
    across: LINE_TO_NEUTRAL,
    source: SOURCE,
  },
  {
    id: 'walkInFreezer',
    equipment: ['walkInFreezer'],
    parts: [
      ...SINGLE_PHASE,
      contact('defrostTimer', ['line', 'cooling']),
      ...pumpDown('cooling'),
      load('evaporatorFan', ['cooling', 'return']),
    ],
    across: LINE_TO_NEUTRAL,
    source: SOURCE,
  },
  {
    id: 'remoteCondensingUnit',
    equipment: ['remoteCondensingUnit'],
    parts: [
      supply('legOne', 'line'),
      supply('legTwo', 'return'),
      supply('legThree', 'third'),
      ...controls('line', 'coil'),
      load('contactor', ['coil', 'return']),
      CONTACTS,
      { ...load('compressor', ['load side', 'return']), alsoFrom: 'legThree' },
      load('condenserFan', ['load side', 'return']),
    ],
    across: ['line', 'return'],
    source: SOURCE,
  },
  {
    id: 'condensingUnitSinglePhase',
    equipment: ['remoteCondensingUnit'],
    parts: [
      ...SINGLE_PHASE,
      ...controls('line', 'coil'),
      load('contactor', ['coil', 'return']),
      CONTACTS,
      ...condensingSide('load side'),
    ],
    across: LINE_TO_NEUTRAL,
    source: SOURCE,
  },
];
