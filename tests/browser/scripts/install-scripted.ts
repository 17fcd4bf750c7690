import { ENDPOINTER_SETTINGS } from '../../../core/hearing/endpointing-policy.ts';
import { documentPage } from '../../../client/recogniser/browser/document-page.ts';
import { createTaskQueue } from '../../../client/recogniser/browser/task-queue.ts';
import { installSpeechRecognition } from '../../../client/recogniser/install-speech-recognition.ts';
import { createRecognitionClass } from '../../../client/recogniser/recognition-class.ts';
import { createScriptedEngine } from '../../support/scripted-engine.ts';

/** Run in each window before its own scripts: the recogniser as the global one, over an engine that is scripted. */
installSpeechRecognition(
  globalThis,
  createRecognitionClass({
    engine: createScriptedEngine(),
    capture: { open: () => Promise.resolve({ kind: 'open', close: () => undefined }) },
    page: documentPage,
    queueTask: createTaskQueue(),
    after: (delayMs, task) => {
      const timer = setTimeout(task, delayMs);
      return () => clearTimeout(timer);
    },
    fetchText: () => Promise.reject(new Error('no grammar lies here')),
    onHidden: () => () => undefined,
    endpointing: ENDPOINTER_SETTINGS,
    expected: () => [],
    onLevel: () => undefined,
    onNoise: () => undefined,
    onDigitalSilence: () => undefined,
    onHeldBack: () => undefined,
    onProgress: () => undefined,
    room: {},
  }),
);
