import { VACUUM_DECAY } from '../calculations/vacuum-defaults.ts';
import type { GuideId } from '../terms/guides.ts';
import type { VisitState } from '../visit/state.ts';
import { safetyCautions } from './cautions.ts';
import type { CautionId, Known } from './verdict.ts';

const SOURCES: Record<GuideId, string> = {
  makeSafe:
    '29 CFR 1910.147, as at lockout-tagout101.webflow.io: isolate, lock and tag, relieve what is stored, verify; a meter proved before and after, capacitors bled: common practice',
  openWithoutRecovery:
    '40 CFR 82.156 for the level of recovery; a pump-down before a line is opened: a technical manual, airconditioningmanuals.tpub.com/TM-5-4110-234-14',
  vacuumDepth: `a maker’s manual, manualarchiveguide.com, page 36: 500 micron, held; ${VACUUM_DECAY.source}`,
  settleWait: 'common practice: 10 to 20 minutes after a change',
  noMeter: 'common practice',
  faultItself: 'common practice',
  coilOhms: 'an open coil shows no path on the meter: common practice',
  highHead: 'the rows of the symptom matrix with head up, the commonest first: common practice',
  lowSuction: 'the rows of the symptom matrix with suction down: common practice',
  lowChargeShows:
    'achrnews.com, troubleshooting a refrigerant undercharge, as in the symptom matrix; subcooling up with a restriction: common practice',
  overchargeShows: 'achrnews.com/articles/133927 and /143822, as in the symptom matrix',
  gaugesOrNot: 'a critically charged unit stays sealed while anything else tells: common practice',
  drierDrop:
    'a temperature drop across the drier shows a restriction: acservicetech.com/post/clogged-liquid-line-filter-drier',
  lookTellsNothing:
    'readings before refrigerant is added: achrnews.com, troubleshooting a refrigerant undercharge',
};

/** What must be heard with it, of this unit now. */
function cautionsOf(guide: GuideId, state: VisitState): readonly CautionId[] {
  if (guide === 'openWithoutRecovery') return safetyCautions('opening', state);
  if (guide === 'gaugesOrNot') return ['liquidBurns'];
  if (guide === 'coilOhms') return ['deadAndDisconnected'];
  return guide === 'vacuumDepth' ? ['noPowerInVacuum'] : [];
}

export const guided = (guide: GuideId, state: VisitState): Known => ({
  kind: 'known',
  formula: null,
  inputs: [],
  source: SOURCES[guide],
  cautions: cautionsOf(guide, state),
  answer: 'guide',
  guide,
});
