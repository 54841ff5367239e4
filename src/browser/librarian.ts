/** The page for whoever looks after a library: copies a text, and counts what happened since a day that the reader chooses. The address keeps the day. */

for (const button of document.querySelectorAll<HTMLButtonElement>('[data-copy]')) {
  button.hidden = false;
  button.addEventListener('click', () => void copy(button));
}

async function copy(button: HTMLButtonElement): Promise<void> {
  const text = document.getElementById(button.dataset['copy'] ?? '');
  const told = button.parentElement?.querySelector('[role=status]');
  if (!text || !told) return;
  try {
    await navigator.clipboard.writeText(text.textContent);
    told.textContent = button.dataset['copied'] ?? '';
  } catch {
    // Refused, or a page that did not come by https: then the text is marked, so that one key copies it.
    getSelection()?.selectAllChildren(text);
    told.textContent = button.dataset['failed'] ?? '';
  }
}

const choice = document.querySelector<HTMLElement>('.since');
const field = choice?.querySelector('input');
if (choice && field) {
  choice.hidden = false;
  const show = (): void => {
    let shown = 0;
    for (const row of document.querySelectorAll<HTMLElement>('[data-day]')) {
      row.hidden = (row.dataset['day'] ?? '') < field.value;
      if (!row.hidden) shown += 1;
    }
    const told = choice.querySelector('[role=status]');
    if (told) told.textContent = field.value === '' ? '' : (choice.dataset['shown'] ?? '').replace('{n}', String(shown));
  };
  field.addEventListener('input', () => {
    history.replaceState(null, '', field.value === '' ? location.pathname : `?since=${field.value}`);
    show();
  });
  field.value = new URLSearchParams(location.search).get('since') ?? '';
  show();
}
