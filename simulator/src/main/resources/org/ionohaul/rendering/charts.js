// Draws every chart of the page: a <div class="chart"> followed by its options as JSON.
(() => {
  'use strict';
  const INK = '#1b1f23', FAINT = '#57606a', RULE = '#d7dce1';
  const HALF_SHEET = 430, WHOLE_SHEET = 760; // how wide a column and a sheet count when printed
  const axis = {
    axisLine: { lineStyle: { color: FAINT } }, axisTick: { lineStyle: { color: FAINT } },
    axisLabel: { color: FAINT, hideOverlap: true }, splitLine: { lineStyle: { color: RULE } },
    nameLocation: 'middle', nameTextStyle: { color: FAINT }, minorTick: { show: false }
  };
  echarts.registerTheme('page', {
    textStyle: { fontFamily: 'system-ui, -apple-system, "Segoe UI", Roboto, "DejaVu Sans", sans-serif', color: INK },
    valueAxis: axis, logAxis: axis, categoryAxis: axis, legend: { textStyle: { color: INK } }
  });

  // What JSON can't say: the words of a tooltip stand beside the number they explain, as "says".
  const says = found => [].concat(found).map(it => it.data.says).filter(Boolean).map(echarts.format.encodeHTML).join('\n');
  const common = {
    animation: false,
    tooltip: { confine: true, formatter: says, textStyle: { color: INK, fontSize: 13 }, extraCssText: 'white-space:pre-line' }
  };

  // Shapes that a custom series asks for by name.
  const shapes = {
    // A surface between two edges; data: x, low, high.
    band(params, api) {
      if (params.context.isDrawn) {
        return null;
      }
      params.context.isDrawn = true;
      const edge = dimension => Array.from({ length: params.dataInsideLength },
        (_, i) => api.coord([api.value(0, i), api.value(dimension, i)]));
      return {
        type: 'polygon', silent: true, shape: { points: edge(2).concat(edge(1).reverse()) },
        style: { fill: api.visual('color'), opacity: 0.15 }
      };
    },
    // A bar of so many pixels below its edge; data: from, to, y, pixels.
    bar(params, api) {
      const [from, to] = [0, 1].map(it => api.coord([api.value(it), api.value(2)]));
      return {
        type: 'rect', style: { fill: api.visual('color') },
        shape: { x: from[0], y: from[1], width: Math.max(0.6, to[0] - from[0]), height: api.value(3) }
      };
    },
    // One trial among many; data: x, y, width of a column, and 0 for a dot, 1 for a ring, 2 for a cross.
    trial(params, api) {
      const [x, y] = api.coord([api.value(0), api.value(1)]);
      const r = 0.46 * Math.min(...api.size([api.value(2), 1]));
      const style = { stroke: api.visual('color'), fill: 'none', lineWidth: 1.4 };
      return [
        { type: 'circle', style: { fill: style.stroke }, shape: { cx: x, cy: y, r } },
        { type: 'circle', style, shape: { cx: x, cy: y, r: r - 0.7 } },
        { type: 'path', style, shape: { pathData: `M${x - r} ${y - r}L${x + r} ${y + r}M${x - r} ${y + r}L${x + r} ${y - r}` } }
      ][api.value(3)];
    },
    // A lying interval with its best guess; data: low, value, high, y.
    whisker(params, api) {
      const [low, value, high] = [0, 1, 2].map(it => api.coord([api.value(it), api.value(3)]));
      const style = { stroke: api.visual('color'), fill: api.visual('color'), lineWidth: 2 };
      const upright = at => ({ type: 'line', style, shape: { x1: at[0], y1: at[1] - 4, x2: at[0], y2: at[1] + 4 } });
      return {
        type: 'group', children: [upright(low), upright(high),
          { type: 'line', style, shape: { x1: low[0], y1: low[1], x2: high[0], y2: high[1] } },
          { type: 'circle', style, shape: { cx: value[0], cy: value[1], r: 4 } }]
      };
    }
  };

  function options(text) {
    const read = JSON.parse(text);
    (read.series || []).forEach(it => {
      if (it.type === 'custom') {
        it.renderItem = shapes[it.renderItem];
      }
    });
    return read;
  }

  const charts = Array.from(document.querySelectorAll('.chart'), place => {
    place.style.height = place.dataset.height + 'px';
    const chart = echarts.init(place, 'page', { renderer: 'svg' });
    chart.setOption(common);
    chart.setOption(options(place.nextElementSibling.textContent));
    // With a view box it fits whatever width paper has in the end; drawn at once, since paper waits for no frame.
    const fit = width => {
      chart.resize({ width });
      chart.getZr().flush();
      place.querySelector('svg').setAttribute('viewBox', `0 0 ${chart.getWidth()} ${chart.getHeight()}`);
    };
    fit('auto');
    new ResizeObserver(() => {
      if (place.clientWidth > 0 && place.clientWidth !== chart.getWidth() && !matchMedia('print').matches) {
        fit('auto');
      }
    }).observe(place);
    return { fit, paperWidth: place.parentElement.matches(':only-child') ? WHOLE_SHEET : HALF_SHEET };
  });
  addEventListener('beforeprint', () => charts.forEach(it => it.fit(it.paperWidth)));
  addEventListener('afterprint', () => charts.forEach(it => it.fit('auto')));

  // Until here the page shows every table unfolded and says that the pictures need a script.
  document.querySelectorAll('.behind').forEach(it => { it.open = false; });
  document.documentElement.classList.add('drawn');
})();
