import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { MakerData } from '../../outputs/maker-data.ts';
import { Desk } from './desk.ts';
import type { Opening } from './opening.ts';
import { DeskPage } from './desk-page.tsx';
import { Start } from './start.tsx';
import { keptPacks, keptPictures } from './storage.ts';

/** The whole of it: where to begin, or the pack that is open. */
export function Maker({ data }: { readonly data: MakerData }): JSX.Element {
  const [desk, setDesk] = useState<Desk>();
  const open = (opening: Opening): void => {
    history.replaceState(null, '', `#${opening.id}`);
    setDesk(new Desk(data, opening));
  };
  useEffect(() => {
    // The address names the pack that was open, so that a page that is loaded again goes on with it.
    const id = location.hash.slice(1);
    if (id === '') return;
    void keptPacks().then(async (packs) => {
      const pack = packs.find((each) => each.id === id);
      if (pack) setDesk(new Desk(data, { ...pack, pictures: await keptPictures(id), revision: pack.revision ?? 0 }));
    });
  }, []);
  const leave = (): void => {
    history.replaceState(null, '', location.pathname + location.search);
    setDesk(undefined);
  };
  return desk ? <DeskPage key={desk.key} desk={desk} leave={leave} open={open} /> : <Start data={data} open={open} />;
}
