// Colours that mean nothing, or not what they should: those of modes only on what is about a mode, red only on limits and
// trouble, blue only on what can be followed, everything else in greys.
function colours(page) {
  const style = (it, part) => page.defaultView.getComputedStyle(it, part);
  const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  const channels = colour => {
    canvas.fillStyle = colour;
    canvas.clearRect(0, 0, 1, 1);
    canvas.fillRect(0, 0, 1, 1);
    return [...canvas.getImageData(0, 0, 1, 1).data];
  };
  const isGrey = rgb => rgb[3] === 0 || Math.max(...rgb.slice(0, 3)) - Math.min(...rgb.slice(0, 3)) <= 32;
  const named = name => channels(style(page.documentElement).getPropertyValue(name).trim()).join();
  const modes = ['--m0', '--m1', '--m2', '--m3', '--m4', '--m5', '--m6'].map(named);
  const red = ['--alert', '--alert-wash'].map(named);
  const blue = ['--link', '--focus'].map(named);
  const trouble = '.alert, .deadline, .lost, .vain, .change, .caution, .warning, .wrong, .wrong-list, [aria-invalid], #state, '
    + '.c-repeated-payload, .c-waiting-in-silence, .c-redialling';
  const found = new Set();
  const look = (it, what, colour) => {
    const rgb = channels(colour), own = (it.getAttribute('class') || '').match(/\bm(\d)\b/);
    if (isGrey(rgb)) { return; }
    const mode = modes.indexOf(rgb.join());
    const isMeant = own ? mode === Number(own[1])
      : it.matches(trouble + ', ' + trouble.split(', ').map(each => each + ' *').join(', ')) ? mode < 0
      : blue.includes(rgb.join()) && it.closest('a, summary, .reached') !== null;
    if (!isMeant) { found.add(what + ' ' + rgb + ': ' + it.outerHTML.slice(0, 100)); }
  };
  page.querySelectorAll('body, body *').forEach(it => {
    if (it.matches('script, style, title, option') || it.getBoundingClientRect().width === 0) { return; }
    const seen = style(it);
    if ([...it.childNodes].some(node => node.nodeType === 3 && node.data.trim()) && !(it instanceof page.defaultView.SVGElement)) {
      look(it, 'ink', seen.color);
    }
    look(it, 'ground', seen.backgroundColor);
    ['Top', 'Right', 'Bottom', 'Left'].filter(side => parseFloat(seen['border' + side + 'Width']) > 0)
      .forEach(side => look(it, 'edge', seen['border' + side + 'Color']));
    if (it instanceof page.defaultView.SVGElement && it.tagName !== 'svg') {
      if (seen.fill !== 'none') { look(it, 'fill', seen.fill); }
      if (seen.stroke !== 'none') { look(it, 'stroke', seen.stroke); }
    }
    ['::before', '::after'].filter(part => style(it, part).content !== 'none')
      .forEach(part => look(it, 'sign', style(it, part).backgroundColor));
    if (it.matches('progress, input')) { look(it, 'accent', seen.accentColor === 'auto' ? '#0075ff' : seen.accentColor); }
  });
  return [...found].join('\n');
}

// Which colour each mode that is named has, a line for each that is seen in a picture's legend or in a grid of answers.
function coloursOfModes(page) {
  const number = it => it.getAttribute('class').match(/\bm(\d)\b/)[1];
  const legends = [...page.querySelectorAll('svg .key[class*=" m"] + text')].map(it => it.textContent + ' ' + number(it.previousElementSibling));
  const names = [...page.querySelectorAll('.mode-name[class*=" m"]')]
    .map(it => it.textContent.replace(/,$| or$/, '').trim() + ' ' + number(it));
  return [...new Set([...legends, ...names])].sort().join('\n');
}
