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

  const words = shape => {
    const title = [...shape.children].find(it => it.tagName === 'title');
    if (title) {
      shape.dataset.says = title.textContent;
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
  const telling = picture => [...picture.querySelectorAll('svg')].filter(it => it.getBoundingClientRect().width > 0)
    .flatMap(svg => [...svg.querySelectorAll('*')].filter(it => words(it)));

  const point = event => {
    const shape = event.target instanceof Element ? event.target.closest('.picture svg *') : null;
    leave();
    if (shape && words(shape)) { tell(shape, event.clientX, event.clientY); }
  };
  ['pointerover', 'pointermove', 'pointerdown'].forEach(it => document.addEventListener(it, point));
  addEventListener('scroll', () => { if (reached) { place(); } else { leave(); } }, { passive: true });
  document.addEventListener('focusin', event => {
    if (event.target.matches('.picture') && event.target.matches(':focus-visible')) { reach(telling(event.target)[0]); }
  });
  document.addEventListener('focusout', leave);
  document.addEventListener('keydown', event => {
    const picture = event.target instanceof Element ? event.target.closest('.picture') : null;
    const shapes = picture ? telling(picture) : [], at = shapes.indexOf(reached);
    const to = { ArrowRight: at + 1, ArrowDown: at + 1, ArrowLeft: at - 1, ArrowUp: at - 1, Home: 0, End: shapes.length - 1 }[event.key];
    if (event.key === 'Escape') { leave(); }
    if (shapes.length && to !== undefined) {
      event.preventDefault();
      reach(shapes[Math.max(0, Math.min(shapes.length - 1, to))]);
    }
  });
})();
