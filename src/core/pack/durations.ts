import * as v from 'valibot';

/**
 * The seconds that a library or a pack may set in place of the usual ones, under their author's names.
 * What each is worth when nobody sets it stands in `plan/seconds.ts`, with its source.
 */

const whole = (least: number, most: number) => v.optional(v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most)));

/** Words a minute. Below 60 hardly anybody reads, above 200 no child follows. Common practice, no source. */
export const paceSchema = v.optional(v.pipe(v.number(), v.minValue(60), v.maxValue(200)));

/** Both waits have a floor of 3 seconds: below it children answer less and less often (Rowe 1986). The other limits are common practice, no source. */
export const durationsSchema = v.optional(
  v.object({
    'page turn': whole(0, 30),
    opening: whole(0, 600),
    closing: whole(0, 600),
    'shortest opening': whole(0, 600),
    'shortest closing': whole(0, 600),
    ask: whole(1, 60),
    wait: whole(3, 60),
    share: whole(1, 120),
    'second wait': whole(3, 60),
    shares: whole(0, 40),
    'small group': whole(2, 12),
    say: whole(0, 1200),
    partner: whole(0, 1200),
    act: whole(0, 1200),
    draw: whole(0, 1200),
    'write a word': whole(0, 1200),
    'write a sentence': whole(0, 1200),
  }),
);
