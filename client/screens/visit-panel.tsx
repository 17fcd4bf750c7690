import { useEffect, useState } from 'preact/hooks';
import type { VisitSettings } from '../../core/visit/events.ts';
import type { VisitSummary } from '../offline/event-log.ts';
import type { Session } from '../state/session.ts';
import { ListeningForm, type ListeningFormProps } from './listening-form.tsx';
import { PartsForm, type PartsFormProps } from './parts-form.tsx';
import { SaveEverything } from './save-everything.tsx';
import { TeachingForm, type TeachingFormProps } from './teaching-form.tsx';
import { SettingsForm } from './settings-form.tsx';
import { VoiceForm, type VoiceFormProps } from './voice-form.tsx';
import { WordingForm, type WordingFormProps } from './wording-form.tsx';
import {
  leftOutWords,
  refusedWords,
  sendTroubleWords,
  unsyncedWords,
  VISITS_UNREAD,
} from './words.ts';

export interface VisitPanelProps {
  readonly session: Session;
  readonly listVisits: () => Promise<readonly VisitSummary[]>;
  /** Whether the page opens without a network, in words. */
  readonly offlineWords: Promise<string>;
  readonly listening: ListeningFormProps;
  readonly teaching: TeachingFormProps;
  readonly wording: WordingFormProps;
  readonly spareVoice: VoiceFormProps;
  readonly carried: PartsFormProps['carried'];
  readonly onCarried: PartsFormProps['onCarried'];
  readonly exportLog: () => Promise<string>;
  readonly onOpen: (visit: string) => void;
  readonly onSendAgain: () => void;
  readonly onNewVisit: () => void;
  readonly onSettings: (settings: VisitSettings) => void;
}

/** The visit itself: where its events are, its habits of units, and the other visits on this device. */
export function VisitPanel(props: VisitPanelProps) {
  const { session, listVisits, onOpen, onNewVisit, onSettings } = props;
  return (
    <div class="visit-tab">
      <Whereabouts session={session} onSendAgain={props.onSendAgain} />
      <Later words={props.offlineWords} />
      <button type="button" class="wide" data-testid="new-visit" onClick={onNewVisit}>
        new visit
      </button>
      <ListeningForm {...props.listening} />
      <TeachingForm {...props.teaching} />
      <WordingForm {...props.wording} />
      <VoiceForm {...props.spareVoice} />
      <PartsForm carried={props.carried} onCarried={props.onCarried} />
      <SettingsForm settings={session.visit.settings} onSettings={onSettings} />
      <SaveEverything exportLog={props.exportLog} />
      <Visits session={session} listVisits={listVisits} onOpen={onOpen} />
    </div>
  );
}

/** Where the entries are, and what is in the way of the rest. */
function Whereabouts({ session, onSendAgain }: Pick<VisitPanelProps, 'session' | 'onSendAgain'>) {
  const { refused, sendTrouble } = session;
  const leftOut = leftOutWords(session.leftOut);
  return (
    <>
      <p data-testid="unsynced">{unsyncedWords(session)}</p>
      {sendTrouble !== null && <p data-testid="send-trouble">{sendTroubleWords(sendTrouble)}</p>}
      {refused !== null && <p data-testid="refused">{refusedWords(refused)}</p>}
      {(refused ?? sendTrouble) !== null && (
        <button type="button" class="wide" data-testid="send-again" onClick={onSendAgain}>
          send it again
        </button>
      )}
      {leftOut !== null && <p data-testid="left-out">{leftOut}</p>}
    </>
  );
}

function Later({ words }: { words: Promise<string> }) {
  const [told, setTold] = useState('');
  useEffect(() => {
    void words.then(setTold);
  }, [words]);
  return <p data-testid="offline">{told}</p>;
}

type VisitsProps = Pick<VisitPanelProps, 'session' | 'listVisits' | 'onOpen'>;

function Visits({ session, listVisits, onOpen }: VisitsProps) {
  const [visits, setVisits] = useState<readonly VisitSummary[]>([]);
  const [told, setTold] = useState('');
  const { visit, history } = session.visit;
  useEffect(() => {
    listVisits().then(
      (listed) => {
        setVisits(listed);
        setTold(listed.length === 0 ? 'none yet' : '');
      },
      () => setTold(VISITS_UNREAD),
    );
  }, [listVisits, visit, history.length]);
  return (
    <section aria-label="Visits on this device">
      <h2>visits on this device</h2>
      {told && <p data-testid="visits-told">{told}</p>}
      {visits.map((summary) => (
        <button
          key={summary.visit}
          type="button"
          class="wide"
          aria-current={summary.visit === visit}
          onClick={() => onOpen(summary.visit)}
        >
          {new Date(summary.openedAt).toLocaleString(undefined, {
            dateStyle: 'medium',
            timeStyle: 'short',
          })}
          {summary.finished ? ', finished' : ', open'}
        </button>
      ))}
    </section>
  );
}
