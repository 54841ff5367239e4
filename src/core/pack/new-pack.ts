/**
 * A pack to begin with: every field that a first pack needs, a remark at each, and blanks between « and ».
 * It passes every check but the one for blanks, so what is still to do is exactly what is told.
 */
export function newPack(slug: string): string {
  const title = slug.replace(/-/g, ' ').replace(/^./, (letter) => letter.toUpperCase());
  return `---
# A companion pack. Lines that begin with # are remarks for you; they are never published.
# Fill in what stands between « and ». Put a text in "double quotes" when it holds a colon or begins with a sign.
title: ${title}
language: en
summary: "«What the story is about, in your own words, without giving the end away.»"

book:
  title: ${title}
  author: "«who wrote it»"
  openings: 14          # an opening is two facing pages
  words: 400            # words in the book, counted or guessed
  rights: in copyright  # or: public domain, licensed, our own
  rights note: "«who holds the rights, and why these few quoted words are fine»"

by:
  name: "«your name or your team's»"
  licence: CC BY 4.0

for:
  grades: [K, 1]
  minutes: 20
# The plan counts 130 words a minute and the usual seconds for the rest. You may set your own:
# pace: 120
# durations: { opening: 45, page turn: 3, wait: 6, draw: 240 }

readings:
  - reading: 1
    purpose: "«why you read it the first time»"

# Three to six stops are plenty. Each needs its own id.
stops:
  - id: first-look
    at:
      opening: 2
      cue: "«the 3-6 words after which you stop»"
      picture: shown    # or: hidden
    ask: "«the exact words you will say»"
    kind: predict       # or: feeling, word, recall, reason, opinion, own life, retell, completion
    depth: 2            # 1 recall, 2 connect, 3 reason, 4 extend
    answer: say         # or: write, draw, act, partner
    or: draw            # an equal way that needs no handwriting
    if quiet: "«what you say when nobody answers»"
  - id: how-it-feels
    at:
      opening: 8
      cue: "«the 3-6 words after which you stop»"
    ask: "«How does … feel? How do you know?»"
    kind: feeling
    about: character    # or: me
    depth: 3
    answer: write
    or: say
    frames:
      - "___ feels ___."
      - "___ feels ___ because ___."
    models:             # two good answers, one of them short
      - text: "«a short good answer»"
      - text: "«a longer good answer, with because»"
    must: true          # kept even in the short lesson

words:
  - word: "«a word worth teaching»"
    meaning: "«If you are …, you …»"
    situation: "«another place where somebody would say it»"

home:
  prompts:              # three at most; they work without the book
    - "«a question a family can ask at the table»"

# Put pictures of your own into the folder pictures/ and list them:
# pictures:
#   - file: harbour.png
#     alt: A small boat tied to a wooden jetty in the rain.
#     credit: "your name"
---

## About this book

«A few plain sentences for families.»
`;
}
