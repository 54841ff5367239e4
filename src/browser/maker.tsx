import { render } from 'preact';
import { Maker } from './maker/maker.tsx';
import type { MakerData } from '../outputs/maker-data.ts';

/** The form that makes packs. It asks the network for nothing but its own parts and the packs that somebody copies. */
const island = document.getElementById('maker-data');
const place = document.getElementById('maker');
if (island && place) {
  place.replaceChildren();
  render(<Maker data={JSON.parse(island.textContent) as MakerData} />, place);
}
