import './without-eval.ts';
import { render } from 'preact';
import { CIRCUIT_STEPS } from '../core/advice/circuit/ready-circuits.ts';
import { namesIn } from '../core/language/names/known-names.ts';
import { draftNote } from '../core/note/draft-note.ts';
import { noteText } from '../core/note/note-text.ts';
import { rehearsalSteps } from '../core/turn/rehearse.ts';
import { browserPorts, type Listening } from './browser-ports.ts';
import type { DeviceLog } from './offline/event-log.ts';
import type { DeviceChoice } from './offline/device-choice.ts';
import type { OfflinePage } from './offline/service-worker.ts';
import { afterDelay, startOffline, type Offline } from './offline/start-offline.ts';
import type { SyncState } from './offline/sync.ts';
import { becomesWriter } from './offline/writer-lock.ts';
import './page.css';
import { BeforePage } from './screens/before-page.tsx';
import { Drawn } from './screens/drawn.tsx';
import { judgeOf } from './screens/judge.ts';
import { Page, type PageTools } from './screens/page.tsx';
import { NOT_OPENED, notDrawn, offlineWords, OPENING, STORAGE_OFF_WORDS } from './screens/words.ts';
import { earlierVisit, firstSessionOrFresh, unstoredSession } from './state/first-session.ts';
import { readEarlier } from './state/read-earlier.ts';
import type { VoiceTeaching } from './teaching/voice-teaching.ts';
import type { Wording } from './phraser/wording.ts';
import type { Ports } from './state/ports.ts';
import { createRunner, type Runner } from './state/runner.ts';
import type { Session } from './state/session.ts';
import type { SpareVoiceChoice } from './voice/voice.ts';

/** Opens the device's log, goes on with the visit that was open, and draws the page at every change. */
async function openPage(root: HTMLElement, onOpened: () => void): Promise<void> {
  let onSync: (state: SyncState) => void = () => undefined;
  const offline = await startOffline((state) => onSync(state));
  const { log, sync, unstored } = offline;
  const ports = browserPorts(log);
  const writes = becomesWriter(log);
  const runner = createRunner(
    ports,
    unstored === null
      ? await firstSessionOrFresh(ports.log, afterDelay)
      : unstoredSession(unstored),
  );
  void writes.then(() => runner.send({ kind: 'becameWriter' }));
  void readEarlier(log, namesIn(ports.partsCarried.read()), (told) => runner.send(told));
  onSync = (state) => {
    const { unsynced: events, leftOut } = state;
    const trouble = state.kind === 'waiting' ? state.why : null;
    const refused = state.kind === 'refused' ? state.message : null;
    runner.send({ kind: 'unsynced', events, leftOut, trouble, refused });
  };
  onSync(sync.state);
  ports.onChoiceForgotten(() => runner.send({ kind: 'choiceForgotten' }));
  const tools = toolsOf(runner, { ...ports, log }, offline);
  const draw = (session: Session): void =>
    render(
      <Drawn broken={notDrawn(session)}>
        <Page session={session} tools={tools} />
      </Drawn>,
      root,
    );
  onOpened();
  runner.subscribe(draw);
  draw(runner.session());
  if (offline.page) takeUpdateBetweenVisits(offline.page, runner);
  warnBeforeLoss(runner);
  void ports.teaching.start();
  readyOneByOne([...rehearsalSteps(), ...CIRCUIT_STEPS, ports.wording.start]);
}

/** After the page is drawn, a step at a time: no tap waits for all of them. */
function readyOneByOne([step, ...rest]: readonly (() => void)[]): void {
  if (step === undefined) return;
  setTimeout(() => {
    step();
    readyOneByOne(rest);
  });
}

interface PagePorts extends Ports {
  readonly log: DeviceLog;
  readonly listening: Listening;
  readonly teaching: VoiceTeaching;
  readonly wording: Wording;
  readonly spareVoice: DeviceChoice<SpareVoiceChoice>;
  readonly partsCarried: DeviceChoice<string>;
}

function toolsOf(
  runner: Runner,
  { log, ear, clock, listening, teaching, wording, spareVoice, partsCarried }: PagePorts,
  { page, sync }: Offline,
): PageTools {
  return {
    exportLog: () => log.exportLog(),
    send: (happening) => runner.send(happening),
    onLevel: (report) => ear.onLevel(report),
    listening,
    teaching,
    wording,
    spareVoice,
    partsCarried,
    now: () => clock.now(),
    judge: judgeOf,
    draftNote,
    noteText,
    listVisits: () => log.visits(),
    offlineWords: page?.ready.then(offlineWords) ?? Promise.resolve(STORAGE_OFF_WORDS),
    sendAgain: () => void sync.retry(),
    openVisit: (visit) => {
      void earlierVisit(log, visit, afterDelay).then((read) => runner.send(read));
    },
  };
}

/** An update reloads the page: only on a page that nobody has used yet, with no visit to go on with. */
function takeUpdateBetweenVisits(page: OfflinePage, runner: Runner): void {
  page.onUpdate(() => {
    const { mode, visit, speeches } = runner.session();
    if (mode.kind === 'asleep' && visit.visit === null && speeches === 0) page.takeUpdate();
  });
}

function warnBeforeLoss(runner: Runner): void {
  window.addEventListener('beforeunload', (event) => {
    const { unkept, unstored, visit } = runner.session();
    if (unkept > 0 || (unstored !== null && visit.visit !== null)) event.preventDefault();
  });
}

/** Long enough that a page which opens as it should shows nothing else before. */
const LONG_MS = 1_000;

async function openOrTell(root: HTMLElement): Promise<void> {
  const callOff = afterDelay(LONG_MS, () => render(<BeforePage told={OPENING} />, root));
  try {
    await openPage(root, callOff);
  } catch (error) {
    callOff();
    console.error(error);
    render(<BeforePage told={NOT_OPENED} onPress={() => location.reload()} />, root);
  }
}

const root = document.getElementById('page');
if (root) void openOrTell(root);
