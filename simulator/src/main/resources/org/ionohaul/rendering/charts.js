// Draws every picture of the page: a <div class="chart"> that names its kind, followed by its data as JSON. What is shown
// comes from there; how it looks stands here. Colour means the mode, except for red, which marks limits.
(() => {
  'use strict';
  const INK = '#1b1f23', FAINT = '#57606a', RULE = '#d7dce1', PAPER = '#ffffff', ALERT = '#b3261e', OPEN = '#d0d7de';
  // Okabe and Ito, "Color Universal Design" (2008), without the yellow, which is too faint on white; lines and dots differ
  // by dash and symbol as well.
  const MODES = ['#0072b2', '#d55e00', '#009e73', '#cc79a7', '#56b4e9', '#e69f00', '#000000'];
  const DASHES = [[], [7, 3], [2, 3], [9, 3, 2, 3]];
  const SYMBOLS = ['circle', 'rect', 'triangle', 'diamond'];
  const PALE = '#dfe3e7', DARK = '#24292f';
  const HALF_SHEET = 430, WHOLE_SHEET = 760, WIDE_SHEET = 1080; // how wide a column and a sheet count when printed

  const round = (of, index) => of[index % of.length];
  const range = (count, entry) => Array.from({ length: count }, (_, i) => entry(i));
  const sum = numbers => numbers.reduce((a, b) => a + b, 0);
  const finite = numbers => numbers.filter(it => it !== null);
  const channels = colour => [1, 3, 5].map(at => parseInt(colour.substr(at, 2), 16));
  const blended = (from, to, share) => '#' + channels(from)
    .map((low, i) => Math.round(low + share * (channels(to)[i] - low)).toString(16).padStart(2, '0')).join('');
  // Relative luminance after WCAG 2, roughly; the limit by eye.
  const isDark = colour => sum(channels(colour).map((it, i) => [0.2126, 0.7152, 0.0722][i] * (it / 255) ** 2.2)) < 0.27;
  const inkOn = colour => isDark(colour) ? PAPER : INK;
  const tint = mode => blended(PAPER, round(MODES, mode), 0.45);
  const shade = share => blended(PALE, DARK, share);
  const letter = colour => blended(colour, INK, 0.4); // 4.5:1 on paper
  const step = (index, count) => shade(count === 1 ? 0.5 : index / (count - 1));

  const axis = {
    axisLine: { lineStyle: { color: FAINT } }, axisTick: { lineStyle: { color: FAINT } },
    axisLabel: { color: FAINT, hideOverlap: true }, splitLine: { lineStyle: { color: RULE } },
    nameLocation: 'middle', nameTextStyle: { color: FAINT }, minorTick: { show: false }
  };
  echarts.registerTheme('page', {
    textStyle: { fontFamily: 'system-ui, -apple-system, "Segoe UI", Roboto, "DejaVu Sans", sans-serif', color: INK },
    valueAxis: axis, logAxis: axis, categoryAxis: axis, legend: { textStyle: { color: INK } }
  });

  // The words of a tooltip stand beside the number they explain, as "says".
  const says = found => [].concat(found).map(it => it.data.says).filter(Boolean).map(echarts.format.encodeHTML).join('\n');
  const common = {
    animation: false,
    tooltip: { confine: true, formatter: says, textStyle: { color: INK, fontSize: 13 }, extraCssText: 'white-space:pre-line' }
  };

  // Shapes that the library lacks, as "renderItem" of a custom series.
  const shapes = {
    // A surface between two edges; data: x, low, high.
    band(params, api) {
      if (params.context.isDrawn) {
        return null;
      }
      params.context.isDrawn = true;
      const edge = dimension => range(params.dataInsideLength, i => api.coord([api.value(0, i), api.value(dimension, i)]));
      return {
        type: 'polygon', silent: true, shape: { points: edge(2).concat(edge(1).reverse()) },
        style: { fill: api.visual('color'), opacity: 0.15 }
      };
    },
    // Between two lines that rise to the right; data: x left, x right, y.
    between(params, api) {
      if (params.context.isDrawn) {
        return null;
      }
      params.context.isDrawn = true;
      const edge = dimension => range(params.dataInsideLength, i => api.coord([api.value(dimension, i), api.value(2, i)]));
      return {
        type: 'polygon', silent: true, shape: { points: edge(0).concat(edge(1).reverse()) },
        style: { fill: api.visual('color'), opacity: 0.15 }
      };
    },
    // Where something ended; data: x, y.
    cross(params, api) {
      const [x, y] = api.coord([api.value(0), api.value(1)]), r = 4;
      return {
        type: 'path', style: { stroke: api.visual('color'), fill: 'none', lineWidth: 1.4 },
        shape: { pathData: `M${x - r} ${y - r}L${x + r} ${y + r}M${x - r} ${y + r}L${x + r} ${y - r}` }
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

  // Parts that kinds of pictures share.
  const inPanel = panel => ({ xAxisIndex: panel, yAxisIndex: panel });
  const shape = (name, color, data, more) => ({ type: 'custom', renderItem: shapes[name], clip: true, color, data, ...more });
  const whiskers = (color, data, more) => shape('whisker', color, data, { silent: true, z: 4, ...more });
  // Lines across a picture; drawn like deadlines if they say no more.
  const marks = (data, more) => ({
    silent: true, symbol: 'none', lineStyle: { color: ALERT, type: [4, 3], width: 1.2 },
    label: { formatter: '{b}', color: ALERT }, data, ...more
  });
  const deadlines = time => time.deadlines.map(it => ({ name: it.label, xAxis: it.at }));
  const namedLine = (name, color, dash, data, more) => ({
    type: 'line', name, color, symbol: 'none', lineStyle: { width: 2, type: dash }, data,
    labelLayout: { moveOverlap: 'shiftY' },
    endLabel: {
      show: true, formatter: '{a}', width: 86, lineHeight: 14, overflow: 'break', color: letter(color), textBorderColor: PAPER, textBorderWidth: 2
    },
    ...more
  });
  const modeLine = (it, data, more) => namedLine(it.mode, round(MODES, it.place), round(DASHES, it.place), data, more);
  // Lettering at points that are not drawn themselves; data: name and value.
  const lettering = (data, label, more) => ({
    type: 'scatter', silent: true, symbolSize: 1, itemStyle: { color: 'transparent' }, data,
    label: { show: true, position: 'right', formatter: '{b}', color: INK, ...label }, ...more
  });
  const timeAxis = (time, panel) => ({
    gridIndex: panel, type: 'value', min: 0, max: time.end, interval: time.step, nameGap: 26,
    name: time.unit + ' after pressing send', axisLine: { onZero: false }, splitLine: { show: false },
    axisLabel: { showMaxLabel: Math.abs(time.end / time.step - Math.round(time.end / time.step)) < 0.001 }
  });
  const percentAxis = { type: 'value', min: 0, max: 100, interval: 20, axisLabel: { formatter: '{value} %' } };

  // How the dots of some rows are stacked: columns of equal width between two deadlines, so that no dot straddles one, and
  // as many columns to a stack as keep every stack low enough.
  function stacks(time, rows) {
    const COLUMNS = 54, HIGHEST = 13;
    const edges = [0, ...time.deadlines.map(it => it.at).sort((a, b) => a - b).filter(it => it < time.end), time.end];
    const sections = range(edges.length - 1, i => {
      const columns = Math.max(1, Math.floor(COLUMNS * (edges[i + 1] - edges[i]) / time.end));
      return { from: edges[i], until: edges[i + 1], columns, pitch: (edges[i + 1] - edges[i]) / columns };
    }).filter(it => it.until > it.from);
    const stacked = (row, together) => {
      const counts = new Map();
      return row.at.map(at => {
        const index = sections.findIndex(it => at <= it.until), section = sections[index];
        const column = Math.min(section.columns - 1, Math.floor((at - section.from) / section.pitch));
        const stack = Math.floor(column / together), first = stack * together;
        const width = Math.min(together, section.columns - first);
        const place = counts.get(index + ' ' + stack) || 0;
        counts.set(index + ' ' + stack, place + 1);
        const x = section.from + section.pitch * (first + place % width + 0.5);
        return { x, layer: Math.floor(place / width), pitch: section.pitch };
      });
    };
    const layers = dots => Math.max(0, ...dots.map(it => it.layer + 1));
    for (let together = 1; ; together++) {
      const found = rows.map(it => stacked(it, together));
      if (together === COLUMNS || found.every(it => layers(it) <= HIGHEST)) {
        return found.map(dots => ({ dots, layers: layers(dots) }));
      }
    }
  }

  // Kinds of pictures by name: each takes its data and returns its height in pixels and the library's options.
  const kinds = {
    DotPlot({ axis: time, rows }) {
      const TOP = 24, BOTTOM = 42, LAYER = 7, NAME = 3, EDGE = 12;
      const heaps = stacks(time, rows);
      const heights = rows.map((row, i) => NAME + Math.max(2, Math.ceil((row.later + row.never) / EDGE), heaps[i].layers));
      const floors = rows.map((_, i) => sum(heights.slice(i + 1)));
      const whole = sum(heights);
      const names = (panel, words, label, more) => lettering(
        words.map((name, i) => ({ name, value: [0, floors[i] + heights[i] - NAME / 2] })),
        { distance: 0, ...label }, { ...inPanel(panel), ...more });
      const beyond = row => [[row.later, 'later'], [row.never, 'never']]
        .filter(it => it[0] > 0).map(it => it.join(' ')).join(', ');
      return {
        height: TOP + LAYER * whole + BOTTOM,
        options: {
          grid: [{ left: 8, right: 106, top: TOP, bottom: BOTTOM }, { width: 98, right: 2, top: TOP, bottom: BOTTOM }],
          tooltip: { trigger: 'item' },
          xAxis: [timeAxis(time, 0), { gridIndex: 1, type: 'value', min: 0, max: EDGE, show: false }],
          yAxis: [0, 1].map(gridIndex => ({ gridIndex, type: 'value', max: whole, show: false })),
          series: [
            ...rows.flatMap((row, i) => [
              shape('trial', round(MODES, row.place), heaps[i].dots.map((it, k) => ({
                value: [it.x, floors[i] + it.layer + 0.5, it.pitch, 0], says: `${row.mode}: through after ${row.clock[k]}`
              })), inPanel(0)),
              shape('trial', round(MODES, row.place), range(row.later + row.never, k => ({
                value: [k % EDGE + 0.5, floors[i] + Math.floor(k / EDGE) + 0.5, 1, k < row.later ? 1 : 2],
                says: row.mode + (k < row.later ? ': through later than shown' : ': never through')
              })), inPanel(1))
            ]),
            names(0, rows.map(it => it.mode), { fontWeight: 'bold', fontSize: 13 }, {
              markLine: marks([
                ...deadlines(time),
                ...floors.map(yAxis => ({ name: '', yAxis, lineStyle: { color: RULE, type: 'solid' } }))])
            }),
            names(1, rows.map(beyond), { fontSize: 11 })
          ]
        }
      };
    },

    RaceChart({ axis: time, whole, unit, end, modes, heading, sky }) {
      const legend = 24 * Math.ceil(modes.length / 2), PLOT = 340, GAP = 84, METER = 96;
      const top = legend + 26, below = top + PLOT + GAP, levels = [...sky.low, ...sky.high];
      const grid = { left: 52, right: 24 };
      // What lies beyond the axis leaves it to the right, at the height reached there.
      const reached = (times, held) => {
        const points = held.map((y, i) => [times[i], y]).filter(it => it[0] !== null);
        const inside = points.filter(it => it[0] <= time.end), next = points[inside.length], last = inside[inside.length - 1];
        const cut = next && last
          ? [[time.end, last[1] + (next[1] - last[1]) * (time.end - last[0]) / (next[0] - last[0])]]
          : last && last[1] < end ? [[time.end, last[1]]] : [];
        return [...inside, ...cut];
      };
      // The right edge at each height of the left one, or the end of the axis where 9 of 10 trials do not get so far.
      const band = it => it.held.map((y, i) => [it.tenth[i], it.ninth[i], y]).filter(row => row[0] !== null && row[0] <= time.end)
        .map(row => [row[0], row[1] === null ? time.end : Math.min(time.end, row[1]), row[2]]);
      return {
        height: below + METER + 48,
        paper: WIDE_SHEET,
        options: {
          grid: [{ ...grid, top, height: PLOT }, { ...grid, top: below, height: METER }],
          legend: { top: 0, left: 0, itemWidth: 34, selectedMode: false, itemStyle: { opacity: 0 }, data: modes.map(it => it.mode) },
          title: { text: heading, left: 0, top: below - 34, textStyle: { fontSize: 13, lineHeight: 16, width: 330, overflow: 'break' } },
          tooltip: { trigger: 'item' },
          xAxis: [timeAxis(time, 0), timeAxis(time, 1)],
          yAxis: [
            {
              type: 'value', min: 0, max: end, name: `${unit} held`, nameGap: 34,
              axisLabel: { showMaxLabel: true, hideOverlap: true }
            },
            { gridIndex: 1, type: 'value', scale: true, splitNumber: 3, axisLabel: { formatter: '{value} dB' } }],
          series: [
            ...modes.flatMap(it => {
              const colour = round(MODES, it.place);
              return [
                shape('between', colour, band(it)),
                {
                  type: 'line', name: it.mode, color: colour, symbol: 'none', z: 3,
                  lineStyle: { width: 3.2, type: round(DASHES, it.place) }, data: reached(it.median, it.held)
                },
                {
                  type: 'line', color: letter(colour), symbol: 'none', step: 'end', z: 4, lineStyle: { width: 1.1 }, data: it.one
                },
                {
                  type: 'scatter', color: colour, symbolSize: 5, z: 5, itemStyle: { opacity: 0.01 },
                  data: it.held.map((y, i) => ({ value: [it.median[i], y], says: `${it.mode}: ${it.says[i]}` }))
                    .filter(point => point.value[0] !== null && point.value[0] <= time.end)
                },
                shape('cross', colour, it.stops, { z: 5 })
              ];
            }),
            { type: 'line', data: [], silent: true, markLine: marks(deadlines(time)) },
            { type: 'line', data: [], silent: true, ...inPanel(1), markLine: marks(deadlines(time), { label: { show: false } }) },
            shape('bar', OPEN, sky.others.map(it => [...it, Math.max(...levels), METER]), inPanel(1)),
            shape('band', INK, sky.at.map((x, i) => [x, sky.low[i], sky.high[i]]), inPanel(1)),
            { type: 'line', color: INK, symbol: 'none', ...inPanel(1), data: sky.at.map((x, i) => [x, sky.median[i]]) }
          ]
        }
      };
    },

    CompletionChart({ axis: time, at, clock, modes }) {
      return {
        height: 310,
        options: {
          grid: { left: 46, right: 92, top: 24, bottom: 42 }, tooltip: { trigger: 'axis' },
          xAxis: timeAxis(time, 0), yAxis: percentAxis,
          series: modes.flatMap((it, mode) => [
            shape('band', round(MODES, it.place), at.map((x, i) => [x, it.low[i], it.high[i]])),
            modeLine(it, at.map((x, i) => ({
              value: [x, it.share[i]],
              says: (mode === 0 ? `Through within ${clock[i]}\n` : '') + `${it.mode}: ${it.says[i]}`
            })), { markLine: marks(mode === 0 ? deadlines(time) : []) })
          ])
        }
      };
    },

    StackedBars({ is_ranked, parts, bars }) {
      const LABELLED = 0.115; // a part this long has room for a short label also on a phone
      const shown = range(parts.length, i => i).filter(i => bars.some(it => it.amounts[i] > 0));
      const colours = parts.map((it, i) => it.colour || step(i, parts.length));
      const room = 46 * bars.length + 8;
      return {
        height: room + (is_ranked ? 0 : 27 * Math.ceil(shown.length / 2)),
        options: {
          aria: { enabled: true, label: { enabled: false }, decal: { show: !is_ranked } },
          grid: { left: 100, right: 4, top: 4, height: room - 8 }, tooltip: { trigger: 'item' },
          legend: { show: !is_ranked, top: room, left: 0, itemWidth: 18, selectedMode: false },
          xAxis: { type: 'value', max: 1, show: false },
          yAxis: {
            type: 'category', inverse: true, data: bars.map(it => `${it.mode}\n${it.remark}`),
            axisTick: { show: false }, axisLine: { show: false },
            axisLabel: { interval: 0, width: 94, overflow: 'break', lineHeight: 15 }
          },
          series: shown.map(i => ({
            type: 'bar', stack: 'whole', name: parts[i].name, color: colours[i], barWidth: 26,
            itemStyle: { borderColor: PAPER, borderWidth: 0.5 },
            label: { color: inkOn(colours[i]), textBorderColor: colours[i], textBorderWidth: 2 },
            data: bars.map(bar => {
              const value = bar.amounts[i] || 0, label = value > 0 ? bar.labels[i] : '';
              return {
                value, says: `${bar.mode}\n${parts[i].name}: ${label}`,
                label: { show: value > LABELLED * label.length / 4, formatter: label }
              };
            })
          }))
        }
      };
    },

    SizeChart({ size_marks, time_marks, bytes, sizes, modes, crossings }) {
      const TOP = 12, PLOT = 280, GAP = 62, below = 48 * crossings.length;
      const times = finite(modes.flatMap(it => [...it.tenth, ...it.median, ...it.ninth])).filter(it => it > 0);
      const low = times.reduce((a, b) => Math.min(a, b), times.length ? Infinity : 1) / 1.2;
      const high = 1.2 * times.reduce((a, b) => Math.max(a, b), times.length ? 2 * low : 60);
      const from = bytes[0], to = bytes[bytes.length - 1], grid = { left: 58, right: 92 };
      return {
        height: TOP + PLOT + GAP + below,
        options: {
          grid: [{ ...grid, top: TOP, height: PLOT }, { ...grid, top: TOP + PLOT + GAP, height: below }],
          tooltip: { trigger: 'axis' },
          xAxis: [
            {
              type: 'log', min: from, max: to, name: 'size of the file', nameGap: 26,
              axisLabel: { show: false }, axisTick: { show: false }, splitLine: { show: false }
            },
            { gridIndex: 1, type: 'log', min: from, max: to, show: false, axisPointer: { show: false } }],
          yAxis: [
            {
              type: 'log', min: low, max: high,
              axisLabel: { show: false }, axisTick: { show: false }, splitLine: { show: false }
            },
            { gridIndex: 1, type: 'value', inverse: true, min: 0, max: Math.max(1, crossings.length), show: false }],
          series: [
            {
              type: 'line', data: [], silent: true, markLine: marks([
                ...size_marks.map(it => ({ name: it.label, xAxis: it.at })),
                ...time_marks.filter(it => it.at >= low && it.at <= high).map(it => ({ name: it.label, yAxis: it.at })),
                ...crossings.map(it => ({
                  name: '', xAxis: it.bytes.value, lineStyle: { color: ALERT, type: [2, 3], width: 1 }
                }))],
              {
                lineStyle: { color: RULE, type: 'solid', width: 1 },
                label: { position: 'start', formatter: '{b}', color: FAINT }
              })
            },
            ...modes.flatMap((it, mode) => [
              // Where 9 of 10 trials are not reached, the band is open to the top.
              shape('band', round(MODES, it.place), range(bytes.length, i => i).filter(i => it.tenth[i] !== null)
                .map(i => [bytes[i], Math.max(low, it.tenth[i]), it.ninth[i] === null ? high : Math.min(high, it.ninth[i])])),
              modeLine(it, bytes.map((x, i) => ({
                value: [x, it.median[i]],
                says: (mode === 0 ? `${sizes[i]}: through by, on 5 of 10 trials (9 of 10)\n` : '') + `${it.mode}: ${it.says[i]}`
              })))
            ]),
            whiskers(ALERT, crossings.map((it, i) => [it.bytes.low, it.bytes.value, it.bytes.high, i + 0.8]), inPanel(1)),
            lettering(crossings.map((it, i) => ({ name: it.says, value: [from, i + 0.3] })),
              { offset: [-60, 0], fontSize: 12 }, inPanel(1))
          ]
        }
      };
    },

    SkyChart({ axis: time, ends }) {
      const PLOT = 180, TOP = 44, GAP = 88, STEP = 10, BAR = 7;
      const top = panel => TOP + panel * (PLOT + GAP);
      const levels = ends.map(it => {
        const all = [...it.low, ...it.high, ...it.disturbance];
        const high = STEP * Math.ceil(all.reduce((a, b) => Math.max(a, b)) / STEP);
        return { min: Math.min(high - STEP, STEP * Math.floor(all.reduce((a, b) => Math.min(a, b)) / STEP)), max: high };
      });
      return {
        height: ends.length * (PLOT + GAP),
        options: {
          tooltip: { trigger: 'axis' },
          title: ends.map((it, i) => ({
            text: it.heading, left: 0, top: top(i) - TOP, textStyle: { fontSize: 13, lineHeight: 16, width: 320, overflow: 'break' }
          })),
          grid: ends.map((_, i) => ({ left: 46, right: 84, top: top(i), height: PLOT })),
          xAxis: ends.map((_, i) => timeAxis(time, i)),
          yAxis: levels.map((it, i) => ({ gridIndex: i, type: 'value', ...it, axisLabel: { formatter: '{value} dB' } })),
          series: ends.flatMap((it, i) => [
            shape('bar', '#8c959f', it.others.map(over => [...over, levels[i].max, BAR]), inPanel(i)),
            shape('band', INK, it.at.map((x, k) => [x, it.low[k], it.high[k]]), inPanel(i)),
            namedLine('disturbed', FAINT, [5, 3], it.at.map((x, k) => [x, it.disturbance[k]]), inPanel(i)),
            namedLine('SNR', INK, [], it.at.map((x, k) => ({ value: [x, it.median[k]], says: it.says[k] })), inPanel(i))
          ])
        }
      };
    },

    LossChart({ least_percent, data_rates }) {
      // The data rates' numbers stand in turn where half, a tenth and a hundredth of the frames are lost.
      const places = [['half_lost_db', 50], ['tenth_lost_db', 10], ['hundredth_lost_db', 1]];
      return {
        height: 300,
        options: {
          grid: { left: 54, right: 26, top: 12, bottom: 42 }, tooltip: { trigger: 'item' },
          xAxis: { type: 'value', scale: true, name: 'SNR in 3 kHz, dB', nameGap: 26, axisLine: { onZero: false } },
          yAxis: {
            type: 'log', min: least_percent, max: 100, axisLine: { onZero: false }, axisLabel: { formatter: '{value} %' }
          },
          series: [
            ...data_rates.map((it, i) => ({
              type: 'line', name: `data rate ${i + 1}`, color: blended('#aab3bc', INK, i / Math.max(1, data_rates.length - 1)),
              lineStyle: { width: 1.8, type: round(DASHES, i) }, symbol: 'circle', symbolSize: 4,
              data: it.snr_db.map((x, k) => ({ value: [x, it.loss[k]], says: it.says[k] }))
            })),
            lettering(data_rates.map((it, i) => ({ name: String(i + 1), value: [it[round(places, i)[0]], round(places, i)[1]] })),
              { textBorderColor: PAPER, textBorderWidth: 2 })
          ]
        }
      };
    },

    SweepCurve({ axis: sweep, height: up, modes }) {
      const legend = Math.floor(24 * (modes.length + 1) / 2); // two names beside one another on a phone
      const at = i => sweep.numbers.length ? sweep.numbers[i] : i;
      const lowest = Math.min(...sweep.numbers), highest = Math.max(...sweep.numbers);
      // A band for each run of values at which something is known; it ends at the top where nothing bounds it.
      const bands = it => it.low
        .map((low, i) => low !== null && low < up.top
          ? [at(i), low, it.high[i] === null ? up.top : Math.min(up.top, it.high[i])] : null)
        .reduce((runs, point) => point ? [...runs.slice(0, -1), [...runs[runs.length - 1], point]] : [...runs, []], [[]])
        .filter(run => run.length > 1)
        .map(run => shape('band', round(MODES, it.place), run));
      return {
        height: 300 + legend,
        options: {
          grid: { left: 52, right: 22, top: legend + 16, bottom: 62 }, tooltip: { trigger: 'axis' },
          legend: { top: 0, left: 0, itemWidth: 34, selectedMode: false, data: modes.map(it => it.mode) },
          xAxis: sweep.numbers.length ? {
            type: 'value', min: lowest, max: highest, interval: sweep.step, nameGap: 26, splitLine: { show: false },
            name: sweep.key + (sweep.unit ? ', ' + sweep.unit : '')
          } : {
            type: 'category', data: sweep.values, name: sweep.key, nameGap: 40,
            axisLabel: { interval: 0, width: 64, overflow: 'break' }
          },
          yAxis: up.is_percent ? percentAxis : {
            type: 'value', min: 0, max: up.top, interval: up.step, name: up.name, nameGap: 30,
            axisLabel: { showMaxLabel: false }
          },
          series: modes.flatMap((it, mode) => [
            {
              type: 'line', name: it.mode, color: round(MODES, it.place), symbol: round(SYMBOLS, it.place), symbolSize: 7, z: 3,
              lineStyle: { width: 2.2, type: round(DASHES, it.place) },
              data: it.value.map((y, i) => ({
                value: [at(i), y],
                says: (mode === 0 ? `${sweep.key} = ${sweep.values[i]}\n` : '') + `${it.mode}: ${it.says[i]}`
              }))
            },
            ...bands(it)])
        }
      };
    },

    RunsCurve({ runs, orders }) {
      const legend = 24 * orders.length;
      return {
        height: 290 + legend,
        options: {
          grid: { left: 52, right: 22, top: legend + 14, bottom: 46 }, tooltip: { trigger: 'axis' },
          legend: { top: 0, left: 0, orient: 'vertical', itemGap: 8, itemWidth: 34, selectedMode: false },
          xAxis: { type: 'category', data: runs, name: 'runs of each mode', nameGap: 28 },
          yAxis: percentAxis,
          series: orders.map((it, i) => ({
            type: 'line', name: it.order, color: step(i, orders.length), symbol: round(SYMBOLS, i), symbolSize: 7,
            lineStyle: { width: 2, type: round(DASHES, i) },
            data: it.percent.map((value, k) => ({ value, says: it.says[k] && `${it.order}: ${it.says[k]}` }))
          }))
        }
      };
    },

    SweepMap({ down, across, cells }) {
      const SHADES = 9;
      const values = finite(cells.map(it => it.value)), low = Math.min(...values), high = Math.max(...values);
      const share = value => high > low ? Math.round((SHADES - 1) * (value - low) / (high - low)) / (SHADES - 1) : 0;
      const colour = it => it.mode !== null ? tint(it.mode) : it.value !== null ? shade(share(it.value)) : '#e1e4e8';
      const colours = [...new Set(cells.map(colour))];
      const label = { interval: 0, overflow: 'break', fontSize: 11 };
      return {
        height: 84 + 38 * down.values.length,
        options: {
          grid: { left: 12, right: 14, top: 30, bottom: 50, containLabel: true }, tooltip: { trigger: 'item' },
          visualMap: {
            type: 'piecewise', show: false, dimension: 2, pieces: colours.map((color, value) => ({ value, color }))
          },
          xAxis: {
            type: 'category', data: across.values, name: across.key, nameGap: 38, axisTick: { show: false },
            axisLabel: { ...label, width: 40 }
          },
          yAxis: {
            type: 'category', inverse: true, data: down.values, name: down.key, nameLocation: 'start',
            nameTextStyle: { align: 'left' }, axisTick: { show: false }, axisLabel: { ...label, width: 76 }
          },
          series: [{
            type: 'heatmap', itemStyle: { borderColor: PAPER, borderWidth: 2 }, label: { show: true, fontSize: 11 },
            labelLayout: { hideOverlap: true },
            data: cells.map((it, i) => ({
              value: [i % across.values.length, Math.floor(i / across.values.length), colours.indexOf(colour(it))],
              says: it.says, label: { formatter: it.label, color: inkOn(colour(it)) }
            }))
          }]
        }
      };
    },

    TornadoChart({ axis: name, end, bars }) {
      return {
        height: 66 + 46 * bars.length,
        options: {
          grid: { left: 8, right: 16, top: 6, bottom: 46, containLabel: true }, tooltip: { trigger: 'item' },
          xAxis: {
            type: 'value', min: -end, max: end, name, nameGap: 28, axisLabel: { showMinLabel: false, showMaxLabel: false }
          },
          yAxis: {
            type: 'category', inverse: true, data: bars.map(it => it.label), axisLine: { show: false }, axisTick: { show: false },
            axisLabel: { interval: 0, width: 150, overflow: 'break', fontSize: 11, lineHeight: 14, color: INK }
          },
          series: [
            {
              type: 'bar', barWidth: 20,
              data: bars.map(it => ({ value: it.change, says: it.label, itemStyle: { color: it.is_last ? '#8c959f' : OPEN } }))
            },
            whiskers(INK, bars.map((it, i) => [it.low, it.change, it.high, i]))]
        }
      };
    },

    BestStrip({ bars }) {
      return {
        height: 70 + 42 * bars.length,
        options: {
          grid: { left: 12, right: 22, top: 10, bottom: 44, containLabel: true }, tooltip: { trigger: 'item' },
          xAxis: { type: 'value', min: 0, max: 100, interval: 20, name: '% of trials ahead of the next mode', nameGap: 26 },
          yAxis: {
            type: 'category', inverse: true, data: bars.map(it => it.value), axisTick: { show: false },
            axisLabel: { width: 110, overflow: 'truncate', interval: 0, color: INK }
          },
          series: [
            {
              type: 'bar', barWidth: 14,
              data: bars.map(it => ({
                value: it.ahead, says: it.says, itemStyle: { color: it.mode === null ? OPEN : tint(it.mode) },
                label: { show: true, position: [2, -15], formatter: it.label, color: INK, fontWeight: 'bold' }
              }))
            },
            whiskers(INK, bars.map((it, i) => [it.low, it.ahead, it.high, i]).filter(it => it[0] !== null))]
        }
      };
    }
  };

  // Modes take the colours in order of their names, whatever the order of the file.
  const placed = data => {
    const rows = [data.modes, data.rows].flatMap(it => it || []), names = rows.map(it => it.mode).sort();
    rows.forEach(it => { it.place = names.indexOf(it.mode); });
    return data;
  };
  const charts = Array.from(document.querySelectorAll('.chart'), place => {
    const { height, paper, options } = kinds[place.dataset.kind](placed(JSON.parse(place.nextElementSibling.textContent)));
    place.style.height = height + 'px';
    const chart = echarts.init(place, 'page', { renderer: 'svg' });
    chart.setOption(common);
    chart.setOption(options);
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
    return { fit, paperWidth: paper || (place.parentElement.matches(':only-child') ? WHOLE_SHEET : HALF_SHEET) };
  });
  addEventListener('beforeprint', () => charts.forEach(it => it.fit(it.paperWidth)));
  addEventListener('afterprint', () => charts.forEach(it => it.fit('auto')));

  // Until here the page shows every table unfolded and says that the pictures need a script.
  document.querySelectorAll('.behind, .fold').forEach(it => { it.open = false; });
  document.documentElement.classList.add('drawn');
})();
