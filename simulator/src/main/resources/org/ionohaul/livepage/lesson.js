// Plays the race: a curtain is drawn back as its time goes on, and only then is told what came of it. Without it, or for those who
// want nothing to move, the race stands still and all is told.
(() => {
  'use strict';
  const race = document.querySelector('.figures'), again = document.getElementById('again');
  if (!race || matchMedia('(prefers-reduced-motion: reduce)').matches) return;
  const told = [document.getElementById('verdict'), document.getElementById('score')].filter(it => it);
  const end = () => {
    race.classList.remove('playing');
    race.inert = false;
    told.forEach(it => it.classList.remove('waiting'));
  };
  const play = () => {
    end();
    void race.offsetWidth; // Begins the animation anew.
    race.classList.add('playing');
    race.inert = true; // Or whoever points at it would see behind the curtain.
    told.forEach(it => it.classList.add('waiting'));
  };
  race.addEventListener('animationend', end);
  document.getElementById('skip').addEventListener('click', end);
  document.getElementById('replay').addEventListener('click', play);
  again.hidden = false;
  play();
})();
