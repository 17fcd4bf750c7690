import { VOICE_PROMPTS } from '../../core/language/heard/voice-prompts.ts';
import { createMicrophone, type MicrophonePorts } from '../ear/microphone.ts';
import { createKeptVoice } from '../offline/kept-voice.ts';
import type { SpeechRecognitionClass } from '../recogniser/recognition-class.ts';
import type { TeamEngine } from '../recogniser/team/team-engine.ts';
import { createPromptReader } from './prompt-reader.ts';
import { createVoiceTeaching, type VoiceTeaching } from './voice-teaching.ts';

export interface BrowserTeachingPorts extends Pick<MicrophonePorts, 'devices' | 'isSecure'> {
  readonly team: TeamEngine;
  /** The standard's class over the page's own engines. */
  readonly SpeechRecognition: SpeechRecognitionClass;
}

export function browserTeaching(ports: BrowserTeachingPorts): VoiceTeaching {
  const { team, SpeechRecognition, devices, isSecure } = ports;
  const reader = createPromptReader(SpeechRecognition);
  const microphone = createMicrophone({ devices, isSecure, onTakenAway: () => reader.stop() });
  let track: MediaStreamTrack | null = null;
  return createVoiceTeaching({
    prompts: VOICE_PROMPTS,
    giveLesson: team.giveLesson,
    kept: createKeptVoice(),
    load: async () => (await team.load()).kind === 'ready',
    openMicrophone: async () => {
      const opening = await microphone.open();
      track = opening.kind === 'open' ? opening.track : null;
      return track !== null;
    },
    closeMicrophone: () => microphone.close(),
    read: (prompt, onHearing) =>
      track === null ? Promise.resolve('failed') : reader.read(prompt, { track, onHearing }),
    stopReading: () => reader.stop(),
  });
}
