// Narrows the list of the search page while one types. The index lies in search-index.js.
'use strict';
(() => {
  const box = document.getElementById('q');
  const count = document.getElementById('count');
  const found = document.getElementById('found');
  const everything = document.getElementById('everything');
  const most = 60;

  const plain = text => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const entries = window.handbookIndex.map(entry => ({
    ...entry,
    inTitle: plain(entry.title),
    inAll: plain([entry.title, entry.about, entry.words, entry.kind].join(' '))
  }));

  const rank = (entry, words) => {
    if (!words.every(word => entry.inAll.includes(word))) {
      return 0;
    }
    const titled = words.filter(word => entry.inTitle.includes(word)).length;
    return 1 + titled * 2 + (entry.inTitle.startsWith(words[0]) ? 1 : 0)
      + (entry.kind === 'Principle' ? 1.5 : 0);
  };

  const line = entry => {
    const item = document.createElement('li');
    const link = document.createElement('a');
    link.href = entry.address;
    link.textContent = entry.title;
    const kind = document.createElement('small');
    kind.textContent = entry.kind;
    item.append(link, ' ', kind);
    if (entry.about) {
      const about = document.createElement('p');
      about.textContent = entry.about;
      item.append(about);
    }
    return item;
  };

  const show = () => {
    const words = plain(box.value).split(/\s+/).filter(word => word);
    const any = words.length > 0;
    everything.hidden = any;
    found.hidden = !any;
    if (!any) {
      count.textContent = '';
      found.replaceChildren();
      return;
    }
    const ranked = entries
      .map(entry => ({entry, rank: rank(entry, words)}))
      .filter(each => each.rank > 0)
      .sort((one, other) => other.rank - one.rank);
    const shown = ranked.slice(0, most);
    count.textContent = ranked.length === 0 ? 'Nothing found. Try fewer or shorter words.'
      : ranked.length === 1 ? '1 found' : ranked.length <= most ? ranked.length + ' found'
      : ranked.length + ' found, the first ' + most + ' shown';
    found.replaceChildren(...shown.map(each => line(each.entry)));
  };

  // From the box down into what was found, and back.
  const links = () => [...found.querySelectorAll('a')];
  document.addEventListener('keydown', event => {
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') {
      return;
    }
    const stops = [box, ...links()];
    const at = stops.indexOf(document.activeElement);
    if (at < 0) {
      return;
    }
    const next = stops[at + (event.key === 'ArrowDown' ? 1 : -1)];
    if (next) {
      next.focus();
      event.preventDefault();
    }
  });

  document.getElementById('hint').textContent =
    'Type in the box at the head of this page. What is found stands below; the arrow keys lead into it.';
  box.form.addEventListener('submit', event => {
    event.preventDefault();
    show();
    const first = links()[0];
    if (first) {
      first.focus();
    }
  });
  box.addEventListener('input', show);
  box.value = new URLSearchParams(location.search).get('q') || '';
  show();
})();
