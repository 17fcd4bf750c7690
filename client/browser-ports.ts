import type { RoomNoise } from '../core/hearing/earshot.ts';
import { PRONUNCIATIONS } from '../core/language/vocabulary/pronunciations.ts';
import { ringTimers } from '../core/turn/ring-timers.ts';
import { takeTurn } from '../core/turn/take-turn.ts';
import { createEar } from './ear/create-ear.ts';
import { createHeardGrammars } from './ear/heard-grammars.ts';
import type { Ear, EarNews, EngineChanged } from './ear/ear.ts';
import { createChosenEar, EAR_CHOICES, type EarChoice } from './ear/native/chosen-ear.ts';
import { openNativeEar } from './ear/native/open-native-ear.ts';
import type { SentenceRecogniser } from './ear/sentence-recogniser.ts';
import { createSentences } from './ear/web-speech-sentences.ts';
import {
  createDeviceChoices,
  type DeviceChoice,
  type DeviceChoices,
} from './offline/device-choice.ts';
import type { EventLog, SyncedLog } from './offline/event-log.ts';
import { openPhraserWorker } from './phraser/open-phraser.ts';
import { createPagePhraser, type PhraserWorker } from './phraser/worker-phraser.ts';
import { createWording, type Wording, WORDINGS } from './phraser/wording.ts';
import { fetchText } from './recogniser/browser/fetch-text.ts';
import { type ChosenEngine, createChosenEngine } from './recogniser/free-text/chosen-engine.ts';
import { createFreeTextEngine } from './recogniser/free-text/free-text-engine.ts';
import type { HeldBack } from './recogniser/capture.ts';
import type { Engine } from './recogniser/engine.ts';
import { createSpeechRecognition } from './recogniser/speech-recognition.ts';
import { createBrowserEngines } from './recogniser/team/browser-engines.ts';
import type { TeamEngine } from './recogniser/team/team-engine.ts';
import { ENGINE_WISHES, type EngineUse, type EngineWish } from './recogniser/team/engine-use.ts';
import { sayEarNews, sayEngineChanged, sayNotKept } from './screens/words.ts';
import { createIds } from './state/browser-ids.ts';
import { browserClock as clock } from './state/clock.ts';
import type { Ports } from './state/ports.ts';
import { browserTeaching } from './teaching/browser-teaching.ts';
import type { VoiceTeaching } from './teaching/voice-teaching.ts';
import { createVoice } from './voice/browser-voice.ts';
import { browserSpareVoice } from './voice/spare/browser-spare-voice.ts';
import { createVoiceOfBoth } from './voice/voice-of-both.ts';
import { SPARE_VOICE_CHOICES, type SpareVoiceChoice } from './voice/voice.ts';
import { createEarcons } from './voice/web-audio-earcons.ts';

/** Where the build puts the engines' files. */
const NEURAL_URL = '/model/neural/files.json';
const EMBEDDED_URL = '/model/en-us';
const RUNTIME_URL = '/runtime';
const PHRASING_URL = '/phrasing';
const RARE_URL = '/heard';

/** What listens, and what was chosen to. */
export interface Listening {
  readonly use: () => EngineUse | null;
  readonly wish: () => EngineWish;
  /** From the next sentence on. */
  readonly choose: (wish: EngineWish) => void;
  readonly ear: () => EarChoice;
  /** From the next press on. */
  readonly chooseEar: (choice: EarChoice) => void;
  readonly model: () => string;
  readonly chooseModel: (name: string) => void;
}

/** What checks a wording comes beside what writes it, so that the first one does not wait for it. */
function openPhraser(): PhraserWorker {
  void import('../core/turn/phrase-reply.ts').catch(() => undefined);
  return openPhraserWorker();
}

/** The session's ports in a browser. */
export function browserPorts(log: EventLog & Pick<SyncedLog, 'canWrite'>): Ports & {
  readonly listening: Listening;
  readonly teaching: VoiceTeaching;
  readonly wording: Wording;
  readonly spareVoice: DeviceChoice<SpareVoiceChoice>;
  /** A name a line. */
  readonly partsCarried: DeviceChoice<string>;
  readonly onChoiceForgotten: (report: () => void) => void;
} {
  const forgotten = createRelay<undefined>();
  const choices = createDeviceChoices(
    () => localStorage,
    () => forgotten.tell(undefined),
  );
  const spareVoice = choices.of('spare voice', SPARE_VOICE_CHOICES);
  const { ear, listening, teaching } = browserEar(choices);
  const phraser = createPagePhraser(openPhraser, PHRASING_URL);
  return {
    listening,
    teaching,
    wording: createWording(phraser, choices.of('wording', WORDINGS)),
    phraser: phraser.current,
    passages: phraser.current,
    log,
    writes: () => log.canWrite,
    clock,
    takeTurn,
    ringTimers,
    sayNotKept,
    sayEngineChanged,
    sayEarNews,
    ear,
    voice: createVoiceOfBoth({
      browsers: createVoice({
        synthesis: 'speechSynthesis' in window ? window.speechSynthesis : undefined,
        utteranceOf: (text) => new SpeechSynthesisUtterance(text),
        clock,
      }),
      spare: browserSpareVoice(),
      wantsSpare: () => spareVoice.read() === 'fetched',
      clock,
    }),
    spareVoice,
    partsCarried: choices.text('parts carried'),
    onChoiceForgotten: forgotten.listen,
    earcons: createEarcons({
      createContext: () => ('AudioContext' in window ? new AudioContext() : null),
      clock,
    }),
    ids: createIds(),
  };
}

/** From a part made first to one made after it. */
function createRelay<News>() {
  let report: (news: News) => void = () => undefined;
  return {
    tell: (news: News): void => report(news),
    listen: (listener: (news: News) => void): void => {
      report = listener;
    },
  };
}

function ownEngines(wish: () => EngineWish, tell: (change: EngineChanged) => void): TeamEngine {
  return createBrowserEngines({
    neuralUrl: NEURAL_URL,
    embeddedUrl: EMBEDDED_URL,
    pronunciations: PRONUNCIATIONS,
    wish,
    onChange: ({ to, why, midSentence }) => {
      console.error(why);
      tell({ kind: 'engineChanged', to, midSentence });
    },
  });
}

/** What a browser may lack. */
const hostPorts = () => ({
  devices: 'mediaDevices' in navigator ? navigator.mediaDevices : undefined,
  isSecure: isSecureContext,
  wakeLock: 'wakeLock' in navigator ? navigator.wakeLock : undefined,
  page: document,
});

/** An engine for each model by name, made when it is first wanted; '' wants none. */
function createModelEngines(named: () => string): () => Engine | null {
  const engines = new Map<string, Engine>();
  return () => {
    const model = named();
    if (model === '') return null;
    const engine = engines.get(model) ?? createFreeTextEngine({ model, runtimeUrl: RUNTIME_URL });
    engines.set(model, engine);
    return engine;
  };
}

function withModelOfChoice(
  own: Engine,
  named: () => string,
  tell: (news: EarNews) => void,
): ChosenEngine {
  return createChosenEngine({
    own,
    other: createModelEngines(named),
    onFailed: (why) => {
      console.error(why);
      tell('modelGone');
    },
  });
}

function browserEar(choices: DeviceChoices): {
  readonly ear: Ear;
  readonly listening: Listening;
  readonly teaching: VoiceTeaching;
} {
  const level = createRelay<number>();
  const progress = createRelay<number>();
  const engineChange = createRelay<EngineChanged>();
  const noise = createRelay<RoomNoise>();
  const digitalSilence = createRelay<undefined>();
  const heldBack = createRelay<HeldBack | null>();
  const grammars = createHeardGrammars((expectation) =>
    fetchText(`${RARE_URL}/${expectation}.jsgf`),
  );
  const wish = choices.of('what listens', ENGINE_WISHES);
  const news = createRelay<EarNews>();
  const whose = choices.of('whose ear', EAR_CHOICES);
  const model = choices.text('speech model');
  const team = ownEngines(wish.read, engineChange.tell);
  const named = (): string => (whose.read() === 'ownWithModel' ? model.read() : '');
  const engine = withModelOfChoice(team, named, news.tell);
  const SpeechRecognition = createSpeechRecognition({
    engine,
    expected: grammars.all,
    onLevel: level.tell,
    onNoise: noise.tell,
    onDigitalSilence: () => digitalSilence.tell(undefined),
    onHeldBack: heldBack.tell,
    onProgress: ({ loadedBytes, totalBytes }) => progress.tell(loadedBytes / totalBytes),
  });
  const sentences = createSentences(SpeechRecognition);
  const own = createEar({
    ...hostPorts(),
    recogniser: { ...sentences, load: () => loadAnew(sentences, { team, engine, grammars }) },
    clock,
    grammarsFor: grammars.expecting,
    onLevel: level.listen,
    onNoise: noise.listen,
    onProgress: progress.listen,
    onEngineChange: engineChange.listen,
    onDigitalSilence: (report) => digitalSilence.listen(report),
    onHeldBack: heldBack.listen,
    onNews: news.listen,
  });
  return {
    teaching: browserTeaching({
      ...hostPorts(),
      team,
      SpeechRecognition: createSpeechRecognition({ engine: team }),
    }),
    ear: createChosenEar({ own, openNative: openNativeEar, choice: whose.read }),
    listening: listeningBy(team, { wish, whose, model }),
  };
}

interface Forgiving {
  readonly team: Pick<TeamEngine, 'forgive'>;
  readonly engine: { readonly forgive: () => void };
  readonly grammars: { readonly load: () => Promise<unknown> };
}

/** Whoever presses again means what failed before, too. */
function loadAnew(
  sentences: SentenceRecogniser,
  { team, engine, grammars }: Forgiving,
): Promise<void> {
  team.forgive();
  engine.forgive();
  void grammars.load().catch((error: unknown) => console.error(error));
  return sentences.load();
}

interface ListeningChoices {
  readonly wish: DeviceChoice<EngineWish>;
  readonly whose: DeviceChoice<EarChoice>;
  readonly model: DeviceChoice<string>;
}

function listeningBy(team: TeamEngine, { wish, whose, model }: ListeningChoices): Listening {
  return {
    use: team.use,
    wish: wish.read,
    choose: (chosen) => {
      wish.choose(chosen);
      team.forgive();
    },
    ear: whose.read,
    chooseEar: whose.choose,
    model: model.read,
    chooseModel: model.choose,
  };
}
