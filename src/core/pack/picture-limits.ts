/** Longest side of a picture that is taken, in pixels: a large scan fits, a decoder is never asked for gigabytes. */
export const longestPictureSide = 12_000;
/** Most pixels of a picture that is decoded. */
export const mostPicturePixels = 40_000_000;
