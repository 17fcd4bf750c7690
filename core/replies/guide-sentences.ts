import type { GuideId } from '../terms/guides.ts';

/** Whole as they stand: who asks them is led through what can hurt, or what is told is the maker's to say. */
export const GUIDE_SENTENCES: Record<GuideId, string> = {
  makeSafe:
    'I cannot clear it for you. The usual order: off and locked at the disconnect, your own lock and tag. Prove the meter on something live, prove the unit dead, line to line and to ground, and prove the meter again. Bleed the capacitors through a resistor. The site’s lock-out rules and the maker come first.',
  openWithoutRecovery:
    'No: it is under pressure. Pump it down or recover it first, prove that there is nothing left, and go by the maker’s procedure and the law, within your licence.',
  vacuumDepth:
    'The maker’s figure first. Without one five hundred microns, read away from the pump; then valve the pump off and watch: it has to hold.',
  settleWait:
    'Ten to twenty minutes after a change, then read again: it has settled when readings a few minutes apart agree.',
  noMeter:
    'Then only look, with the power locked out for any hand: the plug, the breaker and the fuses, the thermostat’s setting, a reset that tripped, burnt contacts. Nothing is proved dead without a meter.',
  faultItself:
    'That is a fault by itself: make it safe, put it right by the maker, and look for what caused it.',
  coilOhms:
    'A coil reads its own ohms, by the maker: no path through it means that it is open, near none that it is shorted.',
  highHead:
    'Mostly a dirty condenser, its fan out, or hot air at it; then an overcharge, or air in the system. Look at the condenser and its fan first.',
  lowSuction:
    'Mostly a low charge, a restriction or a valve that starves the coil, or no air through the coil: ice, dirt, a fan out. Superheat tells them apart: high it is starved, low it gets no air.',
  lowChargeShows:
    'Low suction and low head, high superheat, low subcooling, low amps; bubbles where there is a sight glass. A restriction is much alike, but with subcooling up: read subcooling before any gas goes in.',
  overchargeShows:
    'High head and high subcooling, high amps; with a fixed restriction suction up and superheat down as well. Dirt on the condenser looks much alike: look at it first.',
  gaugesOrNot:
    'On a critically charged or small sealed unit not unless nothing else tells: each time the hoses take some of the charge. Look, clamp and read temperatures first; if they go on, short hoses, and make up what is lost by the maker. On others yes, once you have looked.',
  drierDrop:
    'Next to none: a clean drier is as warm at its outlet as at its inlet. A drop that a thermometer shows, or a hand can feel, tells that it is plugging; frost on it tells it plainly. Recover or pump down before it is cut out.',
  lookTellsNothing:
    'That alone does not tell. Head, suction and superheat against what they should be do: read them, and ask again.',
};
