// What the arrow keys don't tell of what the shapes of pictures say when pointed at.
function untold() {
  const press = (it, key) => it.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
  const tip = document.querySelector('.tip'), faults = [];
  for (const picture of document.querySelectorAll('.picture')) {
    const [narrow, wide] = [...picture.querySelectorAll('svg')].map(svg => [...svg.querySelectorAll('[data-says], :has(> title)')]
      .map(it => it.dataset.says || it.querySelector('title').textContent));
    const isNarrow = picture.querySelector('svg').getBoundingClientRect().width > 0;
    const says = isNarrow ? narrow.map((it, i) => it || wide[i]) : wide;
    if (says.some(it => !it)) { faults.push(picture.id + ' leaves out words'); }
    if (!says.length) { continue; }
    picture.focus({ focusVisible: true });
    if (document.activeElement !== picture) { faults.push(picture.id + ' is not reached'); continue; }
    says.forEach(words => {
      const box = tip.getBoundingClientRect();
      if (tip.hidden || tip.textContent !== words || box.top < 0 || box.bottom > innerHeight || box.left < 0
          || box.right > document.documentElement.clientWidth) {
        faults.push(picture.id + ' does not tell ' + words + ' but ' + tip.textContent);
      }
      press(picture, 'ArrowRight');
    });
    press(picture, 'Home');
    if (tip.textContent !== says[0]) { faults.push(picture.id + ' has no way back'); }
    picture.blur();
    if (!tip.hidden) { faults.push(picture.id + ' does not stop'); }
  }
  return faults.slice(0, 20).join('\n');
}
