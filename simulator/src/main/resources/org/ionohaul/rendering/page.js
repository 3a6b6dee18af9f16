// Folds the page and lets shapes of pictures say something when pointed at. Without it everything is unfolded and drawn, too.
(() => {
  'use strict';
  document.querySelectorAll('.behind, .fold').forEach(it => { it.open = false; });

  // What a shape says is its title, which browsers show late and touch screens never.
  const tip = document.createElement('div');
  tip.className = 'tip';
  tip.hidden = true;
  tip.setAttribute('aria-hidden', 'true');
  document.body.append(tip);
  const say = event => {
    const shape = event.target instanceof Element ? event.target.closest('.picture svg *') : null;
    const title = shape && shape.querySelector('title');
    if (title) {
      shape.dataset.says = title.textContent;
      title.remove();
    }
    tip.hidden = !(shape && shape.dataset.says);
    if (!tip.hidden) {
      tip.textContent = shape.dataset.says;
      const box = tip.getBoundingClientRect(), room = document.documentElement;
      tip.style.left = Math.max(4, Math.min(event.clientX + 14, room.clientWidth - box.width - 4)) + 'px';
      const below = event.clientY + 18;
      tip.style.top = Math.max(4, below + box.height > room.clientHeight ? event.clientY - box.height - 12 : below) + 'px';
    }
  };
  ['pointerover', 'pointermove', 'pointerdown'].forEach(it => document.addEventListener(it, say));
  addEventListener('scroll', () => { tip.hidden = true; }, { passive: true });
})();
