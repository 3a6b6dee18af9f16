// Folds the page. Without it everything is unfolded.
(() => {
  'use strict';
  document.querySelectorAll('.behind, .fold').forEach(it => { it.open = false; });
})();
