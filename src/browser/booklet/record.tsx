import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { base64 } from './base64.ts';
import { useKeeper, type WholeDesk } from './desk.ts';
import { Sound } from './sound.tsx';
import { TakeAway } from './text-answer.tsx';

/** Kinds of sound that the format knows, in the order in which a browser is asked for them. */
const types = ['audio/webm;codecs=opus', 'audio/ogg;codecs=opus', 'audio/mp4'] as const;
/** Bits a second: enough for a voice. source: common practice, no source. */
const bits = 32_000;

interface Props {
  readonly desk: WholeDesk;
  readonly to: string;
}

/** The child's own voice, kept on the device; offered only where the family allowed it and the browser can. */
export function Record({ desk, to }: Props): JSX.Element | null {
  useKeeper(desk);
  const { keeper, words } = desk;
  const say = words.screen.voice;
  const [state, setState] = useState<'still' | 'running' | 'refused' | 'broken'>('still');
  const recorder = useRef<MediaRecorder>(null);
  const stop = () => {
    if (recorder.current?.state === 'recording') recorder.current.stop();
  };
  useEffect(() => {
    const hidden = () => document.visibilityState === 'hidden' && stop();
    document.addEventListener('visibilitychange', hidden);
    return () => {
      document.removeEventListener('visibilitychange', hidden);
      stop();
    };
  }, []);
  const type = 'MediaRecorder' in globalThis ? types.find((each) => MediaRecorder.isTypeSupported(each)) : undefined;
  if (type === undefined || !('mediaDevices' in navigator)) return null;

  const start = async () => {
    let sound: MediaStream;
    try {
      sound = await navigator.mediaDevices.getUserMedia({ audio: true });
    } catch {
      setState('refused');
      return;
    }
    try {
      const made = new MediaRecorder(sound, { mimeType: type, audioBitsPerSecond: bits });
      const parts: Blob[] = [];
      const from = performance.now();
      made.ondataavailable = ({ data }) => parts.push(data);
      made.onstop = () => {
        for (const track of sound.getTracks()) track.stop();
        setState('still');
        const seconds = Math.max(1, Math.round((performance.now() - from) / 1000));
        void base64(new Blob(parts)).then((data) => data !== '' && keeper.put(to, { kind: 'voice', type: type.split(';', 1)[0] as 'audio/webm', seconds, data }));
      };
      made.start();
      recorder.current = made;
      setState('running');
    } catch {
      for (const track of sound.getTracks()) track.stop();
      setState('broken');
    }
  };
  return (
    <div class="voice" role="group" aria-label={say.name}>
      {keeper.placed(to, 'voice').map(({ place, entry }) => (
        <div class="one-answer" key={place}>
          <p class="label">{say.kept(entry.value.seconds)}</p>
          <Sound type={entry.value.type} data={entry.value.data} name={say.kept(entry.value.seconds)} />
          <TakeAway label={say.takeAway} onTake={() => keeper.remove(entry)} />
        </div>
      ))}
      <button type="button" class="page-button" onClick={() => (state === 'running' ? stop() : void start())}>
        {state === 'running' ? say.stop : say.start}
      </button>
      <p class="note" role="status">
        {state === 'running' ? say.running : state === 'refused' ? say.refused : state === 'broken' ? say.broken : ''}
      </p>
    </div>
  );
}
