/** Zips are made and read only when somebody has one: this part is fetched then. */
export { packZip, readPackZip } from '../../outputs/pack-zip.ts';
