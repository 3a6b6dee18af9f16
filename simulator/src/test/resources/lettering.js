// Lettering that cannot be read in place: a line each for what meets other lettering, is cut off, juts out of its picture, or
// is crossed by a straight line of it (unless it has a halo). Boxes of lettering are higher than what is seen of it.
function lettering(page) {
  const found = new Set(), frame = page.defaultView, root = page.documentElement;
  const style = it => frame.getComputedStyle(it);
  const seen = it => it.checkVisibility({ visibilityProperty: true });
  const short = words => words.trim().replace(/\s+/g, ' ').slice(0, 60);
  const ink = box => ({ left: box.left, right: box.right, top: box.top + 0.2 * box.height, bottom: box.bottom - 0.2 * box.height });
  const meet = (a, b) => a.left + 0.5 < b.right && b.left + 0.5 < a.right && a.top + 0.5 < b.bottom && b.top + 0.5 < a.bottom;
  const inSight = it => { const box = it.getBoundingClientRect(); return box.width > 0 && box.height > 0; };
  const words = [];
  const walk = page.createTreeWalker(page.body, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const of = node.parentElement;
    if (!node.data.trim() || of.closest('title, desc, script, style, option, .tip') || !seen(of) || !inSight(of)) { continue; }
    const range = page.createRange();
    range.selectNodeContents(node);
    [...range.getClientRects()].filter(it => it.width > 1 && it.height > 1)
      .forEach(it => words.push({ of, svg: of.closest('svg'), text: short(node.data), box: ink(it) }));
  }
  const place = it => { const at = it.of.closest('[id]'); return (at ? at.id : '') + ': '; };
  words.sort((a, b) => a.box.top - b.box.top).forEach((a, i) => {
    for (let k = i + 1; k < words.length && words[k].box.top < a.box.bottom; k++) {
      const b = words[k];
      if (a.of !== b.of && meet(a.box, b.box) && !clip(a) && !clip(b)) {
        found.add('overlap in ' + place(a) + a.text + ' and ' + b.text);
      }
    }
    const cut = clip(a);
    if (cut && !/auto|scroll/.test(style(cut).overflowX)) { found.add('cut off in ' + place(a) + a.text); }
    if (a.box.right > root.clientWidth + 1 && !scrolls(a.of)) { found.add('juts out of the page ' + place(a) + a.text); }
  });
  // What is not scrolled into sight yet, or never can be.
  function clip(word) {
    for (let it = word.of; it && it !== page.body; it = it.parentElement) {
      if (it instanceof frame.SVGElement) { continue; }
      const way = style(it), edge = it.getBoundingClientRect();
      if (/hidden|clip|auto|scroll/.test(way.overflowX) && (word.box.right > edge.right + 1 || word.box.left < edge.left - 1)) {
        return it;
      }
      if (/hidden|clip/.test(way.overflowY) && (word.box.bottom > edge.bottom + 1 || word.box.top < edge.top - 1)) { return it; }
    }
    return null;
  }
  function scrolls(of) {
    for (let it = of; it; it = it.parentElement) {
      if (/auto|scroll/.test(style(it).overflowX)) { return true; }
    }
    return false;
  }
  [...page.querySelectorAll('svg')].filter(inSight).forEach(svg => {
    const edge = svg.getBoundingClientRect(), mine = words.filter(it => it.svg === svg);
    mine.filter(it => it.box.left < edge.left - 1 || it.box.right > edge.right + 1 || it.box.top < edge.top - 1
      || it.box.bottom > edge.bottom + 1).forEach(it => found.add('juts out of ' + place(it) + it.text));
    svg.querySelectorAll('path, line').forEach(line => {
      const strokes = line.tagName === 'line' ? 1 : (line.getAttribute('d').match(/[A-Za-z]/g) || []).length - 1;
      const box = line.getBoundingClientRect(), way = style(line);
      if (strokes !== 1 || way.stroke === 'none' || Math.min(box.width, box.height) > 1.5) { return; }
      mine.filter(it => style(it.of).paintOrder.indexOf('stroke') !== 0)
        .filter(it => meet({ left: box.left - 1, right: box.right + 1, top: box.top - 1, bottom: box.bottom + 1 },
          { left: it.box.left + 1, right: it.box.right - 1, top: it.box.top + 1, bottom: it.box.bottom - 1 }))
        .forEach(it => found.add('crossed by ' + line.getAttribute('class') + ' in ' + place(it) + it.text));
    });
  });
  return [...found].join('\n');
}
