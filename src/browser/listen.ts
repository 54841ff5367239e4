/**
 * Reads a question or a word aloud with a voice of the device, one sentence at a time, and marks the sentence that is heard.
 *
 * Only voices that work on the device are used: others send the text to somebody's computer. Where there is none in the
 * language of the text, there is no button, and nothing is missing: the text is there to be read.
 */

const speech = 'speechSynthesis' in window ? window.speechSynthesis : undefined;
const labels = { listen: document.body.dataset['listen'], stop: document.body.dataset['listenStop'] };

if (speech && labels.listen !== undefined && labels.stop !== undefined) begin(speech, { listen: labels.listen, stop: labels.stop });

interface Labels {
  readonly listen: string;
  readonly stop: string;
}

function begin(speech: SpeechSynthesis, say: Labels): void {
  let speaking: { readonly button: HTMLButtonElement; readonly end: () => void } | undefined;

  const stop = (): void => {
    const was = speaking;
    speaking = undefined;
    speech.cancel();
    was?.end();
  };

  const speak = (text: HTMLElement, button: HTMLButtonElement, voice: SpeechSynthesisVoice): void => {
    stop();
    const sentences = inSentences(text, voice.lang);
    const end = (): void => {
      for (const sentence of sentences) sentence.classList.remove('is-heard');
      label(button, say.listen, text);
    };
    const mine = { button, end };
    speaking = mine;
    label(button, say.stop, text);
    const next = (index: number): void => {
      sentences[index - 1]?.classList.remove('is-heard');
      const sentence = sentences[index];
      if (speaking !== mine) return;
      if (!sentence) {
        stop();
        return;
      }
      sentence.classList.add('is-heard');
      // One sentence at a time: some browsers fall silent in the middle of a long text.
      const utterance = new SpeechSynthesisUtterance(sentence.textContent.replace(/_{2,}/g, ' … '));
      utterance.voice = voice;
      utterance.lang = voice.lang;
      utterance.rate = 0.9;
      utterance.onend = () => {
        next(index + 1);
      };
      utterance.onerror = () => {
        if (speaking === mine) stop();
      };
      speech.speak(utterance);
    };
    next(0);
  };

  const offer = (): void => {
    for (const text of document.querySelectorAll<HTMLElement>('[data-listen-to]')) {
      const has = text.nextElementSibling?.classList.contains('listen') === true;
      const voice = localVoice(speech, languageOf(text));
      if (has || !voice) continue;
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'listen';
      label(button, say.listen, text);
      button.addEventListener('click', () => {
        if (speaking?.button === button) stop();
        else speak(text, button, voice);
      });
      text.after(button);
    }
  };

  offer();
  // The list of voices may come late, and pages of a booklet come and go.
  speech.addEventListener('voiceschanged', offer);
  new MutationObserver(offer).observe(document.body, { childList: true, subtree: true });
  window.addEventListener('pagehide', stop);
}

function label(button: HTMLButtonElement, word: string, text: HTMLElement): void {
  button.textContent = word;
  // The visible word comes first, so that it can be said to a device that is steered by voice.
  button.setAttribute('aria-label', `${word}: ${text.textContent.trim().slice(0, 40)}`);
}

function languageOf(text: HTMLElement): string {
  return text.closest<HTMLElement>('[lang]')?.lang.toLowerCase() ?? '';
}

/** A voice of the device in a language; one of the same region first. */
function localVoice(speech: SpeechSynthesis, language: string): SpeechSynthesisVoice | undefined {
  const ofVoice = (voice: SpeechSynthesisVoice) => voice.lang.toLowerCase().replace('_', '-');
  const fitting = speech.getVoices().filter((voice) => voice.localService && ofVoice(voice).split('-')[0] === language.split('-')[0]);
  return fitting.find((voice) => ofVoice(voice) === language) ?? fitting[0];
}

/** The text's sentences, each in a span of its own, so that one can be marked. A text with anything but text in it stays whole. */
function inSentences(text: HTMLElement, language: string): readonly HTMLElement[] {
  const made = [...text.querySelectorAll<HTMLElement>('.sentence')];
  if (made.length > 0) return made;
  if (text.children.length > 0 || !('Segmenter' in Intl)) return [text];
  const parts = [...new Intl.Segmenter(language.replace('_', '-'), { granularity: 'sentence' }).segment(text.textContent)].map(({ segment }) => segment);
  text.replaceChildren(
    ...parts.map((part) => {
      const span = document.createElement('span');
      span.className = 'sentence';
      span.textContent = part;
      return span;
    }),
  );
  return [...text.children] as HTMLElement[];
}

export {};
