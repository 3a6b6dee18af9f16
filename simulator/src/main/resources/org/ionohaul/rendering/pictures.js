// Lets shapes of pictures say something when pointed at, or reached with the arrow keys. Without it they are drawn, too, and
// tables say what is rounded to fewer points; who hears a page has those anyway.
(() => {
  'use strict';
  // What a shape says is its title, which browsers show late, and never on touch screens or for keys.
  const tip = document.createElement('div');
  tip.className = 'tip';
  tip.hidden = true;
  tip.setAttribute('aria-hidden', 'true');
  document.body.append(tip);
  let reached = null;
  // How far the keys came in each picture: a page may draw it anew meanwhile.
  const places = new Map();

  // The drawing for phones leaves out what the other says as well.
  const telling = svg => [...svg.querySelectorAll('[data-says], :has(> title)')];
  const twin = shape => {
    const [narrow, wide] = [...shape.closest('.picture').querySelectorAll('svg')].map(telling);
    return words(wide[narrow.indexOf(shape)]);
  };
  const words = shape => {
    const title = [...shape.children].find(it => it.tagName === 'title');
    if (title) {
      shape.dataset.says = title.textContent || twin(shape);
      title.remove();
    }
    return shape.dataset.says;
  };
  const leave = () => {
    tip.hidden = true;
    reached?.classList.remove('reached');
    reached = null;
  };
  const tell = (shape, x, y) => {
    tip.hidden = false;
    tip.textContent = words(shape);
    const box = tip.getBoundingClientRect(), room = document.documentElement;
    tip.style.left = Math.max(4, Math.min(x + 14, room.clientWidth - box.width - 4)) + 'px';
    tip.style.top = Math.max(4, y + 18 + box.height > room.clientHeight ? y - box.height - 12 : y + 18) + 'px';
  };
  const place = () => {
    const box = reached.getBoundingClientRect();
    tell(reached, (box.left + box.right) / 2, Math.min(box.bottom, innerHeight - 60));
  };
  const reach = shape => {
    leave();
    reached = shape;
    shape.classList.add('reached');
    shape.scrollIntoView({ block: 'nearest' });
    place();
  };
  const shapes = picture => telling([...picture.querySelectorAll('svg')].find(it => it.getBoundingClientRect().width > 0));

  const point = event => {
    const shape = event.target instanceof Element ? event.target.closest('.picture svg *') : null;
    leave();
    if (shape && words(shape)) { tell(shape, event.clientX, event.clientY); }
  };
  ['pointerover', 'pointermove', 'pointerdown'].forEach(it => document.addEventListener(it, point));
  addEventListener('scroll', () => { if (reached) { place(); } else { leave(); } }, { passive: true });
  document.addEventListener('focusin', event => {
    if (event.target.matches('.picture') && event.target.matches(':focus-visible')) {
      const all = shapes(event.target);
      reach(all[Math.min(places.get(event.target.id) || 0, all.length - 1)]);
    }
  });
  document.addEventListener('focusout', leave);
  document.addEventListener('keydown', event => {
    const picture = event.target instanceof Element ? event.target.closest('.picture') : null;
    const all = picture ? shapes(picture) : [], at = all.indexOf(reached);
    const to = { ArrowRight: at + 1, ArrowDown: at + 1, ArrowLeft: at - 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    if (event.key === 'Escape') { leave(); }
    if (all.length && to !== undefined) {
      event.preventDefault();
      places.set(picture.id, Math.max(0, Math.min(all.length - 1, to)));
      reach(all[places.get(picture.id)]);
    }
  });
})();
