import { DEFAULT_SETTINGS } from './events.ts';
import type { UnitFacts, VisitState } from './state.ts';

const NO_FACTS: UnitFacts = {
  refrigerant: null,
  metering: null,
  equipment: null,
  doors: null,
  valves: null,
  cause: null,
  chargeDoubt: null,
  sightGlass: null,
  condenser: null,
  headControl: null,
  name: null,
  site: null,
  nameplate: {},
};

/** Before anything was said. */
export const EMPTY_VISIT: VisitState = {
  history: [],
  visit: null,
  openedAt: null,
  openedOn: null,
  finishedAt: null,
  settings: DEFAULT_SETTINGS,
  unit: NO_FACTS,
  readings: [],
  findings: [],
  work: [],
  preparations: [],
  recommendations: [],
  memos: [],
  doubts: [],
  leftOver: [],
  timers: [],
  beforeMarkedAt: null,
  afterMarkedAt: null,
  steps: null,
  finishHeld: false,
  undoable: [],
  worded: [],
  lastQuantity: null,
  lastPlace: null,
  lastPart: null,
  wanted: null,
  wantedPlace: null,
};
