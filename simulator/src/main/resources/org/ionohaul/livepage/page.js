'use strict';
// Asks for the answer to what the controls say until all trials are in, and keeps the address in step with them.

const form = document.getElementById('controls');
const found = document.getElementById('found');
const state = document.getElementById('state');
const page = Array.from(crypto.getRandomValues(new Uint8Array(8)), it => it.toString(16).padStart(2, '0')).join('');
const SOON = 150, AGAIN = 400, LATER = 2000, TYPING = 300;
let seen = '', timer = 0, asking = new AbortController();

const isComparing = () => form.elements.compare.checked;
const names = list => Array.from(list.querySelectorAll('input:checked'), it => it.value).sort();

// Only what is not as in the file, so that an address stays short and follows the file.
function query() {
  const asked = new URLSearchParams();
  if (isComparing()) asked.set('compare', 'yes');
  for (const field of form.querySelectorAll('[data-written]')) {
    const name = field.dataset.list || field.name;
    if (name.startsWith('second.') && !isComparing()) continue;
    const value = field.dataset.list ? '[' + names(field).join(', ') + ']' : field.value.trim();
    const isChanged = value !== field.dataset.written;
    field.classList.toggle('changed', isChanged);
    if (isChanged) {
      asked.set(name, field.dataset.list ? '[' + names(field).map(it => '"' + it + '"').join(', ') + ']' : value);
    }
  }
  return asked.toString();
}

function address(asked) {
  return asked ? '/?' + asked : '/';
}

function link(id, path, asked) {
  document.getElementById(id).href = path + (asked ? '?' + asked : '');
}

// Messages go beside their controls; what belongs to none stays above the answers.
function tellRemarks() {
  form.querySelectorAll('.remark').forEach(it => { it.textContent = ''; it.className = 'remark'; });
  form.querySelectorAll('[aria-invalid]').forEach(it => {
    it.removeAttribute('aria-invalid');
    it.removeAttribute('aria-describedby');
  });
  for (const told of found.querySelectorAll('.remarks li')) {
    const place = document.getElementById('remark-' + told.dataset.name);
    const isWrong = told.dataset.wrong === 'true';
    if (place) {
      place.textContent += (place.textContent ? ' ' : '') + told.textContent;
      place.classList.toggle('wrong', isWrong);
      const field = form.elements[told.dataset.name];
      if (field && field.setAttribute) {
        field.setAttribute('aria-describedby', place.id);
        if (isWrong) field.setAttribute('aria-invalid', 'true');
      }
      told.remove();
    } else {
      told.classList.toggle('wrong-list', isWrong);
    }
  }
}

function show(text) {
  const active = found.contains(document.activeElement) ? document.activeElement : null;
  const held = active && (active.hasAttribute('href') ? '[href="' + active.getAttribute('href') + '"]' : active.id && '#' + active.id);
  const scrolled = Array.from(found.querySelectorAll('.scroll'), it => it.scrollLeft);
  const unfolded = Array.from(found.querySelectorAll('.behind'), it => it.open);
  const fresh = document.createElement('template');
  fresh.innerHTML = text;
  fresh.content.querySelectorAll('.behind').forEach((it, i) => { it.open = Boolean(unfolded[i]); });
  const wrong = fresh.content.querySelector('[data-wrong=true]');
  const last = found.querySelector('.sides');
  const isWaiting = fresh.content.querySelectorAll('.sides > section').length > fresh.content.querySelectorAll('.grid').length;
  // The last answers stay, grey, while a value is wrong or the first trials are simulated.
  if ((wrong || isWaiting) && last) {
    fresh.content.querySelector('.sides').replaceWith(last);
    last.classList.add('stale');
  }
  found.replaceChildren(fresh.content);
  found.querySelectorAll('.scroll').forEach((it, i) => { it.scrollLeft = scrolled[i] || 0; });
  if (held) found.querySelector(held)?.focus({ preventScroll: true });
  tellRemarks();
  state.textContent = wrong ? 'Something above can\'t be simulated; the answers are those before.' : '';
  const answers = document.getElementById('answers');
  seen = answers.dataset.version;
  document.getElementById('numbers').hidden = answers.dataset.over !== 'true' || Boolean(wrong);
  return answers.dataset.over === 'true';
}

async function ask() {
  clearTimeout(timer);
  asking.abort();
  asking = new AbortController();
  const signal = asking.signal;
  let wait = found.querySelector('.sides:not(.stale) .grid') ? AGAIN : SOON;
  try {
    const answer = await fetch('/answer?' + query(),
      { headers: { 'X-Page-Token': document.body.dataset.token, 'X-Page': page, 'X-Seen': seen }, signal });
    const text = await answer.text();
    if (signal.aborted) return;
    if (answer.status === 200) {
      if (show(text)) return;
    } else if (answer.status === 204) {
      state.textContent = '';
    } else {
      state.textContent = text;
      wait = LATER;
    }
  } catch (e) {
    if (signal.aborted) return;
    state.textContent = 'The program that serves this page does not answer: it has ended, or was stopped. Start it again and'
      + ' reload the page; the address keeps what you asked.';
    wait = LATER;
  }
  if (!document.hidden) timer = setTimeout(ask, wait);
}

function changed() {
  const asked = query();
  document.body.classList.toggle('comparing', isComparing());
  history.replaceState(null, '', address(asked));
  link('save', '/scenario.toml', asked);
  link('numbers', '/summary.json', asked);
  seen = '';
  found.querySelector('.sides')?.classList.add('stale');
  ask();
}

// A value's one number goes up or down by what makes a difference to it: a decibel, a tenth or so of anything else.
function step(field, by) {
  const numbers = field.value.match(/\d+(?:\.\d+)?/g);
  if (!numbers || numbers.length !== 1) return;
  const sign = /-\s*\d/.test(field.value) ? -1 : 1;
  const number = sign * Number(numbers[0]);
  const isLevel = /dB|^S\d/.test(field.value);
  const size = isLevel ? 1 : number >= 100 ? 10 ** (Math.floor(Math.log10(number)) - 1) : number >= 10 ? 1 : number >= 2 ? 0.5 : 0.1;
  const next = Math.round(10 * (number + by * size)) / 10;
  if (next <= 0 && !isLevel) return;
  field.value = field.value.replace(/-?\s*\d+(?:\.\d+)?/, String(next));
  settle(0);
}

let typing = 0;
function settle(wait) {
  clearTimeout(typing);
  typing = setTimeout(changed, wait);
}

form.addEventListener('submit', event => { event.preventDefault(); settle(0); });
form.addEventListener('input', () => settle(TYPING));
form.addEventListener('change', event => {
  if (event.target.name === 'compare' && event.target.checked) {
    // The second setting begins as the first.
    form.querySelectorAll('[name^="second."]').forEach(it => { it.value = form.elements[it.name.slice('second.'.length)].value; });
  }
  settle(0);
});
form.addEventListener('click', event => {
  const button = event.target.closest('.step');
  if (button) step(button.parentElement.querySelector('input'), Number(button.dataset.by));
});
form.addEventListener('keydown', event => {
  if (event.target.matches('input[type=text]') && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
    event.preventDefault();
    step(event.target, event.key === 'ArrowUp' ? 1 : -1);
  }
});
document.getElementById('reset').addEventListener('click', () => { location.href = '/'; });
found.addEventListener('click', event => {
  const row = event.target.closest('a[href^="#case-"]');
  if (row) {
    event.preventDefault();
    form.elements.case.value = row.getAttribute('href').slice('#case-'.length);
    settle(0);
  }
});
document.addEventListener('visibilitychange', () => { if (!document.hidden) ask(); });
if (matchMedia('(max-width: 52rem)').matches) {
  // On a phone the answers would be far below: only what was changed stays unfolded, or the first group.
  query();
  const groups = Array.from(form.querySelectorAll('details.group'));
  const isKept = groups.some(it => it.querySelector('.changed')) ? it => it.querySelector('.changed') : it => it === groups[0];
  groups.forEach(it => { it.open = Boolean(isKept(it)); });
}
changed();
