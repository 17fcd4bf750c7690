import { createSpeechRecognition } from '../../../client/recogniser/speech-recognition.ts';
import { createBrowserEngines } from '../../../client/recogniser/team/browser-engines.ts';
import { installSpeechRecognition } from '../../../client/recogniser/install-speech-recognition.ts';

/** As the recogniser's README tells a stranger to do it, run in each window before that window's own scripts. */
const engine = createBrowserEngines({
  neuralUrl: '/model/neural/files.json',
  embeddedUrl: '/model/en-us',
  pronunciations: {},
  wish: () => 'neural',
  onChange: ({ to, why }) => console.warn(`now ${to}: ${why}`),
});
installSpeechRecognition(globalThis, createSpeechRecognition({ engine }));
