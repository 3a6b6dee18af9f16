const frameOf = page => page.defaultView;
// Text whose colour stands out less than 4.5 to 1 from what is behind it (WCAG 2.2, 1.4.3).
function faint(page) {
  const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  const channels = colour => {
    canvas.fillStyle = colour;
    canvas.clearRect(0, 0, 1, 1);
    canvas.fillRect(0, 0, 1, 1);
    return [...canvas.getImageData(0, 0, 1, 1).data];
  };
  const light = rgb => rgb.slice(0, 3).map(it => it / 255)
    .map(it => it <= 0.04045 ? it / 12.92 : ((it + 0.055) / 1.055) ** 2.4)
    .reduce((sum, it, i) => sum + it * [0.2126, 0.7152, 0.0722][i], 0);
  const style = element => frameOf(page).getComputedStyle(element);
  const behind = element => {
    for (let it = element; it; it = it.parentElement) {
      const colour = channels(style(it).backgroundColor);
      if (colour[3] === 255) { return colour; }
    }
    return [255, 255, 255, 255];
  };
  const seen = new Set();
  page.querySelectorAll('body *').forEach(it => {
    const isDrawn = it instanceof frameOf(page).SVGElement;
    const words = [...it.childNodes].some(node => node.nodeType === 3 && node.data.trim());
    if (!words || it.getBoundingClientRect().width === 0 || it.matches('title, script, style')) { return; }
    const under = isDrawn && it.classList.contains('on') ? style(it.previousElementSibling) : null;
    const ground = under
      ? channels(under.fill).map((c, i) => behind(it)[i] + (c - behind(it)[i]) * under.fillOpacity) : behind(it);
    const ink = channels(isDrawn ? style(it).fill : style(it).color);
    const [low, high] = [light(ink), light(ground)].sort((a, b) => a - b);
    if ((high + 0.05) / (low + 0.05) < 4.5) {
      seen.add('faint: ' + it.tagName + ' ' + it.getAttribute('class') + ' ' + ink + ' on ' + ground + '\\n');
    }
  });
  return [...seen].join('');
}

// What keeps people out who hear a page, or have no pointer: names, roles, order of headings, landmarks, tables, references.
// Rules of WCAG 2.2 and ARIA 1.2, as far as a page can be asked for them; a line each.
function barriers(page) {
  const found = [];
  const tell = (what, it) => found.push(what + ': ' + it.outerHTML.slice(0, 160).replace(/\s+/g, ' '));
  const all = query => [...page.querySelectorAll(query)];
  const isSeen = it => it.checkVisibility({ visibilityProperty: true });
  const text = it => (it.textContent || '').trim();
  const byIds = ids => (ids || '').split(/\s+/).filter(it => it);
  const name = it => (it.getAttribute('aria-label') || '').trim()
    || byIds(it.getAttribute('aria-labelledby')).map(id => text(page.getElementById(id) || page.createElement('i'))).join(' ').trim()
    || (it.labels && [...it.labels].map(text).join(' ').trim()) || (it.matches('a, button, summary, legend') ? text(it) : '')
    || (it.getAttribute('title') || '').trim();
  const root = page.documentElement;
  // 3.1.1, 2.4.2, 1.4.4
  if (!/^[a-z]{2}/.test(root.lang)) tell('no language', root);
  if (!page.title.trim()) tell('no title', root);
  const viewport = page.querySelector('meta[name=viewport]');
  if (!viewport || /user-scalable=no|maximum-scale/.test(viewport.content)) tell('no zoom', viewport || root);
  // Landmarks: one main, and everything that is seen within one.
  if (all('main').length !== 1) tell('not one main', page.body);
  [...page.body.children].filter(it => isSeen(it) && text(it)
      && !it.matches('header, main, footer, nav, form, [role], [aria-hidden=true], script, style'))
    .forEach(it => tell('outside of landmarks', it));
  // Headings: one of the first level, none left out.
  if (all('h1').length !== 1) tell('not one h1', page.body);
  let level = 0;
  all('h1, h2, h3, h4').filter(isSeen).forEach(it => {
    const own = Number(it.tagName[1]);
    if (own > level + 1) tell('a level of headings is left out', it);
    if (!text(it)) tell('an empty heading', it);
    level = own;
  });
  // 4.1.2: names and references.
  const ids = all('[id]').map(it => it.id);
  ids.filter((id, i) => ids.indexOf(id) !== i).forEach(id => tell('an id twice', page.getElementById(id)));
  all('a[href], button, summary, input:not([type=hidden]), select, textarea, [role=region], [role=img], table')
    .filter(it => isSeen(it) && !name(it)).forEach(it => tell('no name', it));
  all('img:not([alt])').forEach(it => tell('no alternative', it));
  all('svg').filter(it => !it.closest('[role=img]')).forEach(it => tell('a picture without a role', it));
  ['aria-labelledby', 'aria-describedby', 'aria-controls', 'for', 'headers'].forEach(which =>
    all('[' + which + ']').filter(it => byIds(it.getAttribute(which)).some(id => !page.getElementById(id)))
      .forEach(it => tell('refers to nothing', it)));
  all('a[href^="#"]').filter(it => !page.getElementById(it.getAttribute('href').slice(1)))
    .forEach(it => tell('leads nowhere', it));
  all('[role]').filter(it => !['img', 'region', 'note', 'status', 'alert', 'group'].includes(it.getAttribute('role')))
    .forEach(it => tell('an unusual role', it));
  all('[aria-hidden=true]').filter(it => it.querySelector('a, button, input, select, [tabindex]'))
    .forEach(it => tell('hidden, but reached by keys', it));
  all('fieldset').filter(it => !it.querySelector(':scope > legend')).forEach(it => tell('no legend', it));
  // 1.3.1: tables have heads, lists have items.
  all('table').forEach(it => {
    if (!it.querySelector('th[scope=col], th[scope=colgroup]')) tell('no column heads', it);
    it.querySelectorAll('tbody tr').forEach(row => {
      if (row.querySelector('td') && !row.querySelector('th[scope]')) tell('no row head', row);
    });
    it.querySelectorAll('th').forEach(head => { if (!head.scope) tell('a head of nothing', head); });
  });
  all('li').filter(it => !it.parentElement.matches('ul, ol')).forEach(it => tell('no list', it));
  all('dt, dd').filter(it => !it.closest('dl')).forEach(it => tell('no list', it));
  // 2.1.1, 2.4.7: what scrolls is reached by keys, and what is reached is seen to be.
  all('body *').filter(it => isSeen(it) && it.scrollWidth > it.clientWidth + 1
      && /auto|scroll/.test(getComputedStyle(it).overflowX) && it.tabIndex < 0)
    .forEach(it => tell('scrolls, but not by keys', it));
  all('[tabindex]').filter(it => it.tabIndex > 0).forEach(it => tell('an order of its own', it));
  all('a[href], button, summary, input:not([type=hidden]), select, [tabindex]').filter(isSeen).slice(0, 60).forEach(it => {
    it.focus({ preventScroll: true, focusVisible: true });
    const style = getComputedStyle(it);
    if (page.activeElement === it && (style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2)) {
      tell('focus is not seen', it);
    }
  });
  return [...new Set(found)].join('\n');
}
