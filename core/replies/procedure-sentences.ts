import type { Known } from '../advice/verdict.ts';
import {
  type ProcedureId,
  PROCEDURES,
  type ProcedureStepId,
  type StepBarId,
} from '../terms/procedures.ts';
import { CAUTION_SENTENCES } from './caution-sentences.ts';
import { capitalised, plain, type Said, sentences } from './said.ts';

/** One short sentence each: heard beside a fan, with both hands on the valve. */
export const PROCEDURE_SENTENCES: Record<ProcedureStepId, string> = {
  protectYourself: 'Gloves and goggles on.',
  backSeatBoth: 'Back-seat both stems: all the way out.',
  closeHands: 'Close both hand valves on the manifold.',
  screwHosesOn: 'Port caps off, hoses on: high to discharge, low to suction.',
  purgeFromTheUnit: 'Loosen each hose at the manifold, crack its stem for one breath, and tighten.',
  crackBoth: 'Crack both stems a quarter turn, and read.',
  pullHosesDown: 'Pull the hoses down with the pump before they go on.',
  screwEndsOn: 'Screw the ends on with their valves shut.',
  openEnds: 'Open the ends, and read.',
  keepItRunning: 'Keep it running, and look that the suction line is not frosted.',
  backSeatDischarge: 'Back-seat the discharge stem: all the way out.',
  shutHighEnd: 'Shut the high hose where it meets the fitting.',
  drawIntoSuction: 'Open the high hand valve, then crack the low one.',
  waitForSuction: 'Wait until both gauges read suction.',
  backSeatSuction: 'Back-seat the suction stem: all the way out.',
  shutLowEnd: 'Shut the low hose at the fitting, then both hand valves.',
  hosesOff: 'Take the hoses off slowly, and cap the ports.',
  leakCheckCaps: 'Leak-check every cap and stem.',
  receiverHoldsIt: 'Check that the receiver holds the whole charge.',
  solenoidOpen: 'See that the liquid line solenoid stays open.',
  lowControlHeld: 'If the low control stops it early, hold it in by hand.',
  closeKing: 'Close the king valve: all the way in.',
  runToZero: 'Run it down to just above zero. Never into a vacuum.',
  stopAndWatch: 'Stop it, and watch suction rise.',
  runAgain: 'Run it down again until it stays down.',
  lockBeforeOpening: 'Lock it out before you open anything.',
  openKing: 'Open the king valve slowly, all the way out.',
  backSeatAll: 'Back-seat discharge and suction: all the way out.',
  snugGlands: 'Snug the packing glands.',
  capsOn: 'Caps on, stems and ports.',
  controlsBack: 'Jumpers off, and the controls back where they were.',
  askWhatIsOpen: 'Ask me what is left open.',
  oneGasCylinder: 'A cylinder for this gas alone.',
  cylinderOnScale: 'Put it on the scale, in date and rated for the gas.',
  recoveryHoses: 'Short hoses, cores out, and pull the hoses down.',
  liquidFirst: 'Take liquid first, then vapour.',
  watchTheScale: 'Stop at the fill weight, not past it.',
  pullToLevel: 'Pull it to the level the law sets, and stop the machine.',
  holdTheLevel: 'Wait a few minutes. If it rises, run it again.',
  weighItOut: 'Shut the cylinder, weigh it, and tell me the ounces.',
  provenTight: 'Be sure it is empty and tight first.',
  coresOut: 'Cores out, short wide hoses on both sides.',
  gaugeFarEnd: 'Micron gauge at the end away from the pump.',
  freshOil: 'Fresh oil in the pump, then pull.',
  pullDeep: 'Pull it below five hundred microns.',
  valveOffAndWatch: 'Valve the pump off, and watch it for ten minutes.',
  readTheRise: 'Rises and levels off: moisture. Keeps on rising: a leak.',
  breakWithCharge: 'Break it with the charge, weighed in.',
  nothingLeftIn: 'Refrigerant out, and shut off what cannot take the pressure.',
  regulatorAndRelief: 'Regulator and relief on the nitrogen.',
  lowestRating: 'Find the lowest rating in the circuit. That is the limit.',
  raiseInSteps: 'Raise it in steps, and listen.',
  soapJoints: 'Soap every joint.',
  noteBoth: 'Tell me the pressure and the gas temperature.',
  shutAndWait: 'Shut the cylinder, and wait.',
  letItDown: 'Let it down slowly, outdoors.',
};

type Step = Extract<Known, { answer: 'step' }>;

/** The caution before the step that can hurt, every time it is told. */
export function stepSaid({
  procedure,
  step,
  number,
  of,
  caution,
  told,
}: Omit<Step, 'answer'>): Said {
  const place = `step ${String(number)} of ${String(of)}`;
  const head: Record<Step['told'], string> = {
    begun: `${PROCEDURES[procedure].name}, ${String(of)} steps.`,
    moved: '',
    asked: `${PROCEDURES[procedure].name}, ${place}.`,
  };
  return sentences([
    plain(head[told]),
    plain(caution === null ? '' : CAUTION_SENTENCES[caution]),
    plain(PROCEDURE_SENTENCES[step]),
  ]);
}

export function stepsDoneSaid(procedure: ProcedureId): Said {
  return capitalised(plain(`${PROCEDURES[procedure].name}: that was the last step.`));
}

export const BAR_SENTENCES: Record<StepBarId, string> = {
  flammableOrToxic:
    'Not by these steps: that gas burns or poisons. Only with tools rated for it, by the maker’s own procedure.',
  carbonDioxide:
    'Not by these steps: carbon dioxide stands too high for ordinary hoses. Go by the maker’s own procedure.',
  mixedCharge:
    'Not here: the gas is mixed or not known. Recover it into a cylinder of its own, and keep it out of the unit.',
  frontSeatedDischarge:
    'Stop it now: the discharge valve is closed and the compressor runs. Open the valve before it starts again.',
  trappedLiquid: 'Not now: liquid is shut in between closed valves. Open one of them first.',
  frozenSuction:
    'Not now: the suction side is frozen, so liquid would go to the compressor. Thaw it and find why first.',
  liquidReturning: 'Not now: superheat says liquid is coming back already. Find why first.',
  noReceiver: 'A cap tube unit has no receiver to pump down into. Recover the charge and weigh it.',
};
