import type { Session } from '../state/session.ts';
import { shownMode } from './shown-mode.ts';
import { unitName } from './unit-name.ts';
import { REFUSED_STANDING, STATE_WORDS, unstoredStanding } from './words.ts';

/** Which unit, which refrigerant, and the state in a word. */
export function Strip({ session }: { session: Session }) {
  const { visit, unkept, unstored, refused, hearing } = session;
  const mode = shownMode(session);
  return (
    <header class="strip">
      <p class="unit">{unitName(visit.unit)}</p>
      {visit.unit.refrigerant ? (
        <b data-testid="strip-refrigerant">{visit.unit.refrigerant}</b>
      ) : (
        <p class="blank">refrigerant?</p>
      )}
      {unkept > 0 && <p class="unkept">{unkept} not kept</p>}
      {refused !== null && unstored === null && (
        <p class="unkept" data-testid="not-sent">
          {REFUSED_STANDING}
        </p>
      )}
      {unstored !== null && (
        <p class="unkept" data-testid="unstored">
          {unstoredStanding(session)}
        </p>
      )}
      <p
        class="state"
        data-testid="state"
        data-state={mode}
        data-hearing={hearing ? 'yes' : 'no'}
        data-why={whyOf(session)}
      >
        {STATE_WORDS[mode]}
      </p>
    </header>
  );
}

function whyOf({ mode }: Session): string | undefined {
  return mode.kind === 'deaf' ? mode.why : undefined;
}
