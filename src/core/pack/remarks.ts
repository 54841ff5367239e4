/** The Markdown without HTML comments, each line kept so that lines still count right. Code keeps what looks like a comment. */
export function withoutRemarks(markdown: string): { text: string; comments: readonly number[]; unclosed: number | undefined } {
  const comments: number[] = [];
  const kept: string[] = [];
  let inComment = false;
  let fence = '';
  let opened = 0;
  for (const [index, line] of markdown.split('\n').entries()) {
    const mark = /^ {0,3}(`{3,}|~{3,})/.exec(line)?.[1] ?? '';
    if (!inComment && fence === '' && mark !== '') fence = mark;
    else if (fence !== '' && mark.startsWith(fence)) fence = '';
    if (fence !== '' || (mark !== '' && !inComment)) {
      kept.push(line);
      continue;
    }
    let rest = line;
    let text = '';
    while (rest !== '') {
      const next = rest.indexOf(inComment ? '-->' : '<!--');
      if (next === -1) {
        if (!inComment) text += rest;
        break;
      }
      if (!inComment) {
        text += rest.slice(0, next);
        comments.push(index);
        opened = index;
        rest = rest.slice(next + 4);
      } else rest = rest.slice(next + 3);
      inComment = !inComment;
    }
    kept.push(text);
  }
  // A remark that never ends is told as that, and not as a remark as well.
  return { text: kept.join('\n'), comments: inComment ? comments.slice(0, -1) : comments, unclosed: inComment ? opened : undefined };
}
