import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** A recording to listen to. */
export function Sound({ type, data, name }: { readonly type: string; readonly data: string; readonly name: string }): JSX.Element {
  const [url, setUrl] = useState('');
  useEffect(() => {
    const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
    const made = URL.createObjectURL(new Blob([bytes], { type }));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [data]);
  return url === '' ? <p class="note">{name}</p> : <audio controls preload="metadata" src={url} aria-label={name} />;
}
