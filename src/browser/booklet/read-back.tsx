import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { isNamed, type Booklet } from '../../core/booklet/booklet.ts';
import { bringBack, kinship, leftBehind, mergeBooklets } from '../../core/booklet/merge-booklets.ts';
import { limits } from '../../core/booklet/booklet-schema.ts';
import { readBooklet, type ReadBooklet } from '../../core/booklet/read-booklet.ts';
import type { WholeDesk } from './desk.ts';
import { storage } from './storage.ts';
import { useOwnId } from './own-id.ts';

/** What a file turned out to be, and what there is to choose. */
type Told = { readonly lines: readonly string[]; readonly older?: Booklet; readonly twin?: Booklet };

/** Reads a saved file in, and puts it to what is here. Nothing of a file is run, and nothing here is lost by it. */
export function ReadBack({ desk }: { readonly desk: WholeDesk }): JSX.Element {
  const { keeper, words } = desk;
  const say = words.screen.mine;
  const id = useOwnId();
  const [told, setTold] = useState<Told>();
  const result = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (told) result.current?.focus();
  }, [told]);

  const putTogether = (file: Booklet, leftOut: number) => {
    const before = keeper.booklet;
    if (!before) return;
    const after = mergeBooklets(before, { ...file, id: before.id, bookmark: before.bookmark });
    keeper.take(after);
    const news = after.entries.filter((entry) => !before.entries.some((each) => isNamed(each, entry))).length;
    const older = leftBehind(after, file).length;
    setTold({
      lines: [news > 0 ? say.read(news) : say.nothingNew, ...(leftOut > 0 ? [say.leftOut(leftOut)] : []), ...(older > 0 ? [say.older(older)] : [])],
      ...(older > 0 ? { older: file } : {}),
    });
  };
  const read = async (field: HTMLInputElement) => {
    const chosen = field.files?.[0];
    const { booklet } = keeper;
    field.value = '';
    if (!chosen || !booklet) return;
    // Looked at from outside first: a huge file would fill the memory before it could be refused.
    const found: ReadBooklet = chosen.size > limits.file ? { booklet: undefined, reason: 'too-big' } : readBooklet(await chosen.text());
    if (!found.booklet) {
      setTold({ lines: [words.unreadable[found.reason]] });
      return;
    }
    const file = found.booklet;
    if (file.pack.slug !== booklet.pack.slug || file.pack.language !== booklet.pack.language) setTold({ lines: [say.otherBook(file.pack.title)] });
    else if (kinship(booklet, file) === 'copies') putTogether(file, found.leftOut);
    else if (kinship(booklet, file) === 'same bookmark') setTold({ lines: [say.sameMark], twin: file });
    else {
      try {
        await storage.save({ booklet: file, settings: { flow: keeper.settings.flow, microphone: false } });
        setTold({ lines: [say.otherMark(words.screen.bookmark(file.bookmark.pattern, file.bookmark.colour)), ...(found.leftOut > 0 ? [say.leftOut(found.leftOut)] : [])] });
      } catch {
        setTold({ lines: [words.screen.keeping.full] });
      }
    }
  };
  return (
    <div class="read-back">
      <p class="file-field">
        <label for={id}>{say.readBack}</label>
        <input id={id} type="file" accept=".html,text/html,application/json" onChange={(event) => void read(event.currentTarget)} aria-describedby={`${id}-note`} />
      </p>
      <p class="note small" id={`${id}-note`}>
        {say.readBackNote}
      </p>
      {told && (
        <div class="told" ref={result} tabIndex={-1}>
          {told.lines.map((line) => (
            <p>{line}</p>
          ))}
          {told.older && (
            <button
              type="button"
              class="page-button"
              onClick={() => {
                if (keeper.booklet && told.older) keeper.take(bringBack(keeper.booklet, keeper.writing, leftBehind(keeper.booklet, told.older)));
                setTold({ lines: [say.broughtBack] });
              }}
            >
              {say.bringBack}
            </button>
          )}
          {told.twin && (
            <p class="button-row">
              <button type="button" class="page-button" onClick={() => told.twin && putTogether(told.twin, 0)}>
                {say.sameChild}
              </button>
              <button type="button" class="page-button" onClick={() => setTold(undefined)}>
                {say.otherChild}
              </button>
            </p>
          )}
        </div>
      )}
    </div>
  );
}
